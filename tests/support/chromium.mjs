// Finds a Chromium for the tests: CHROMIUM_PATH, else the one that came with npm, else one installed on the machine.
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const modules = fileURLToPath(new URL("../../node_modules", import.meta.url));

const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-dev-shm-usage",
  "--disable-background-networking",
  "--disable-component-update",
];

// With LANG unset or C the browser calls its language "en-US@posix", which Intl refuses.
const language = { LANG: "en_US.UTF-8", LC_ALL: "en_US.UTF-8" };

/**
 * Unpacks the browser into `folder`, together with the shared libraries it needs.
 *
 * @param {string} folder
 */
async function unpack(folder) {
  // The package unpacks into the system's temporary folder and trusts whatever version lies there already, so it gets a
  // folder of its own; the second variable makes it unpack its own security libraries as well.
  const own = { TMPDIR: folder, AWS_LAMBDA_JS_RUNTIME: "nodejs20.x" };
  const touched = ["TMPDIR", "AWS_LAMBDA_JS_RUNTIME", "LD_LIBRARY_PATH", "FONTCONFIG_PATH", "HOME"];
  const before = touched.map((name) => process.env[name]);
  mkdirSync(folder, { recursive: true });
  Object.assign(process.env, own);
  try {
    await (await import("@sparticuz/chromium")).default.executablePath();
  } finally {
    touched.forEach((name, i) => {
      if (before[i] === undefined) delete process.env[name];
      else process.env[name] = before[i];
    });
  }
}

/** @param {string} folder */
const fontsConfig = (folder) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${join(folder, "fonts/fonts")}</dir><cachedir>${join(folder, "fontcache")}</cachedir></fontconfig>
`;

async function bundled() {
  const manifest = join(modules, "@sparticuz/chromium/package.json");
  if (process.platform !== "linux" || process.arch !== "x64" || !existsSync(manifest)) return undefined;
  const { version } = /** @type {{ version: string }} */ (JSON.parse(readFileSync(manifest, "utf8")));
  const folder = join(modules, ".cache/chromium", version);
  if (!existsSync(folder)) {
    const partial = `${folder}.${process.pid}`;
    await unpack(partial);
    writeFileSync(join(partial, "fonts.conf"), fontsConfig(folder));
    try {
      renameSync(partial, folder);
    } catch {
      rmSync(partial, { recursive: true, force: true }); // another process was first: use what it unpacked
    }
  }
  const libraries = { LD_LIBRARY_PATH: join(folder, "al2023/lib"), FONTCONFIG_FILE: join(folder, "fonts.conf") };
  return { executablePath: join(folder, "chromium"), args, env: { ...process.env, ...language, ...libraries } };
}

/**
 * Launch options for playwright.
 *
 * @returns {Promise<import("playwright").LaunchOptions>}
 */
export async function chromium() {
  const env = { ...process.env, ...language };
  if (process.env.CHROMIUM_PATH) return { executablePath: process.env.CHROMIUM_PATH, args, env };
  const own = await bundled();
  if (own) return /** @type {import("playwright").LaunchOptions} */ (own);
  const installed = ["/usr/bin/chromium", "/usr/bin/google-chrome"].find((file) => existsSync(file));
  return /** @type {import("playwright").LaunchOptions} */ (
    installed ? { executablePath: installed, args, env } : { channel: "chrome", args, env }
  );
}
