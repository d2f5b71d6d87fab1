// What was measured, as a table.

const total = (numbers) => numbers.reduce((sum, each) => sum + each, 0);
const mean = (numbers) => total(numbers) / numbers.length;
const percent = (share) => `${(100 * share).toFixed(2)} %`;

/** Goals, by what is measured and what is known. */
const goals = [
  {strip: true, cuts: 'free', seconds: 1, known: 'optimumHeight', over: 0.01},
  {strip: true, cuts: 'free', seconds: 10, known: 'optimumHeight', over: 0.0065},
  {strip: true, cuts: 'straight', seconds: 1, known: 'optimumHeight', over: 0.02},
  {strip: true, cuts: 'straight', seconds: 5, known: 'guillotineOptimumRot', over: 0},
  {strip: false, cuts: 'straight', seconds: 2, known: 'RG3', over: 0.006},
];

const goalFor = ({strip, cuts, instance: {known}}, seconds) =>
  goals.find((goal) => goal.strip === strip && goal.cuts === cuts && goal.seconds === seconds && goal.known in known);

/** Best known sheets in all: of whole groups the best published total, of single instances what is known of each. */
function bestKnownTotal(tasks, groups) {
  const inGroup = (group) => tasks.filter(({instance}) => instance.class === group.class && instance.count === group.n);
  const whole = groups.filter((group) => group.variant === 'RG' && inGroup(group).length === 10);
  const rest = tasks.filter((task) => !whole.some((group) => inGroup(group).includes(task)));
  return total(whole.map(({bestKnown}) => bestKnown)) + total(rest.map(({best}) => best));
}

const areaOf = ({w, h, n = 1, polygon}) => n * (polygon
  ? Math.abs(total(polygon.map(([x, y], i) => polygon.at(i - 1)[0] * y - x * polygon.at(i - 1)[1]))) / 2 : w * h);

/** Sheets over the best known in all. */
function sheetsRow(tasks, values, packers, groups) {
  const known = bestKnownTotal(tasks, groups);
  return {
    over: total(values) / known - 1,
    here: `${total(values)} sheets, best known ${known}: + ${percent(total(values) / known - 1)}`,
    packed: packers && `${total(packers)} sheets, + ${percent(total(packers) / known - 1)}`,
  };
}

/** Length over the best known, on average. */
function lengthsRow(tasks, values, packers) {
  const over = (lengths) => mean(lengths.map((value, i) => value / tasks[i].best - 1));
  const atBest = values.filter((value, i) => value <= tasks[i].best + 1e-6).length;
  return {over: over(values), here: `+ ${percent(over(values))}, ${atBest} at best known`, packed: packers && `+ ${percent(over(packers))}`};
}

/** How much of the strip used is pieces, on average. */
function densityRow(tasks, values) {
  const density = (lengths) => percent(mean(tasks.map(({instance: {items}, across}, i) => total(items.map(areaOf)) / (lengths[i] * across))));
  return {over: undefined, here: `density ${density(values)}, best known ${density(tasks.map(({best}) => best))}`, packed: undefined};
}

/** Where nothing is known of some. */
function plainRow(values, packers, {strip}) {
  const unit = strip ? 'of length' : 'sheets';
  return {over: undefined, here: `${total(values)} ${unit}`, packed: packers && `${total(packers)} ${unit}`};
}

function rowOf(what, all, seconds, groups) {
  const [{task, result: {packer}}] = all;
  const tasks = all.map((each) => each.task), values = all.map(({result}) => result.values[seconds]);
  const packers = packer && all.map(({result}) => result.packer.value);
  const {over, here, packed} = tasks.some(({best}) => best === undefined) ? plainRow(values, packers, task)
    : !task.strip ? sheetsRow(tasks, values, packers, groups)
    : task.uneven ? densityRow(tasks, values) : lengthsRow(tasks, values, packers);
  const goal = goalFor(task, seconds)?.over;
  return {
    what, instances: all.length, here, packed: packed ? `${packer.name}: ${packed}` : '–', goal: goal === undefined ? 'none yet' : `≤ ${percent(goal)}`,
    missed: goal !== undefined && over > goal + 1e-9 ? percent(over - goal) : '–',
  };
}

/** One row for each set, way to cut and time. */
export function rowsOf(done, sets) {
  const kinds = new Map();
  for (const each of done) {
    for (const seconds of each.task.seconds) {
      const what = `${each.task.set}, ${each.task.cuts === 'free' ? 'free' : 'straight cuts'}, ${seconds} s`;
      if (!kinds.has(what)) kinds.set(what, {seconds, all: []});
      kinds.get(what).all.push(each);
    }
  }
  return [...kinds].map(([what, {seconds, all}]) => rowOf(what, all, seconds, sets.find(({name}) => name === all[0].task.set).groups));
}

export function printed(rows) {
  const line = (...cells) => `| ${cells.join(' | ')} |`;
  return [
    line('set', 'instances', 'packer from npm', 'here', 'goal', 'missed by'), line('---', '---', '---', '---', '---', '---'),
    ...rows.map(({what, instances, packed, here, goal, missed}) => line(what, instances, packed, here, goal, missed)),
  ].join('\n');
}
