interface Policies {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): string };
}

const rules = {
  createScriptURL(url: string): string {
    if (new URL(url, location.href).origin !== location.origin) throw new TypeError(`${url} is not of this page`);
    return url;
  },
};

const policies = (globalThis as { trustedTypes?: Policies }).trustedTypes;
const policy = policies ? policies.createPolicy("thirstline", rules) : rules;

/** The address of one of the page's own scripts, as a worker takes it under the page's content security policy. */
export function trustedScript(url: string): string {
  return policy.createScriptURL(url);
}
