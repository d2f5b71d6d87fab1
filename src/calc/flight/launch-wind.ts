/** A wind that is felt, and one that carries a glider about, m/s. The first: force 1 of the Beaufort scale begins there; the second: common practice, no source. */
const felt = 0.3;
export const windy = 1;

/** What to make of a wind along the throw, less than nothing from behind: best thrown in little or no wind, and into it. Common practice, no source. */
export const launchWind = (wind: number): 'calm' | 'ahead' | 'behind' => wind <= -felt ? 'behind' : wind >= windy ? 'ahead' : 'calm';
