// First script of every strict page: tells the test outside what the policy refused.
document.addEventListener('securitypolicyviolation', ({effectiveDirective, blockedURI}) => {
  parent.postMessage({violation: {directive: effectiveDirective, blocked: blockedURI}}, '*');
});
addEventListener('load', () => { parent.postMessage({loaded: true}, '*'); });
