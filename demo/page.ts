/** The lesson's own three switches: which glider, whose units, whose language. */
const design = document.querySelector('glider-design');

document.querySelector('#which')?.addEventListener('change', (e) => { if (design) design.src = (e.target as HTMLSelectElement).value; });
document.querySelector('#units')?.addEventListener('change', (e) => {
  for (const element of document.querySelectorAll(design ? 'glider-design' : '[class~=alone]')) element.setAttribute('units', (e.target as HTMLSelectElement).value);
});
document.querySelector('#language')?.addEventListener('change', (e) => { document.documentElement.lang = (e.target as HTMLSelectElement).value; });

export {};
