// What MUTATE asks for: "core", or one folder of it, "core/parts". Shared by Stryker's configuration, the bundle and the runner.
const asked = process.env.MUTATE ?? "core";
const [pack = "core", ...folders] = asked.split("/");

/** The tests that speak of a package, or of a folder of it. */
/** @type {Readonly<Record<string, readonly string[]>>} */
const of = {
  core: [
    "packages/core/src/**/*.test.ts",
    "tests/published/**/*.test.ts",
    "tests/properties/*.test.ts",
    "tests/properties/soil/*.test.ts",
    // These speak of the study, or need so much else that a mutant would wait for nothing but its loading.
    "!tests/published/{accuracy,bedWitnesses,lineWitnesses,priming,suction,unitFactors,units}.test.ts",
    "!tests/published/{books,choose,gauge}/**",
    "!tests/published/{fuels/atmosphereTables,soil/sense}.test.ts",
    "!tests/properties/{card,spread}.test.ts",
  ],
  // Everything runs through the solver, so its mutants would be tried with everything: these are what is said of it.
  "core/circuit": [
    "packages/core/src/{circuit,parts,supply}/**/*.test.ts",
    "tests/properties/{bank,branches,checkValve,drop,inverse,line,restriction,solver,tanks}.test.ts",
  ],
  study: [
    "packages/study/src/**/*.test.ts",
    "tests/mutation/keptOutputs.ts",
    "tests/published/{choose,gauge}/**/*.test.ts",
    // What is not here goes through whole machines, a second or more a test, and every mutant would wait for it.
    "tests/properties/choose/arrangedSystem.test.ts",
    "tests/properties/fleet/appending.test.ts",
  ],
  "study/working": [
    "packages/study/src/working/**/*.test.ts",
    "tests/mutation/{keptOutputs,workings}.ts",
    "tests/properties/working/{benches,formulas,keys,retold,told}.test.ts",
  ],
};

/** What is asked for and the folders around it, the outermost first. */
const around = [asked];
while (around[0]?.includes("/")) around.unshift(around[0].slice(0, around[0].lastIndexOf("/")));
const told = around.findLast((path) => Object.hasOwn(of, path));

if (told === undefined) throw new Error(`MUTATE is one of ${Object.keys(of).join(", ")}, got "${pack}"`);

export const target = {
  /** For the names of reports, "core" or "core-parts". */
  name: [pack, ...folders].join("-"),
  /** The sources to plant mutants in. */
  sources: ["packages", pack, "src", ...folders, "**/*.ts"].join("/"),
  tests: of[told] ?? [],
};

/** Where the tests and sources lie as one file, from the top of the repository. */
export const bundle = "reports/mutation/bundle/tests.mjs";
