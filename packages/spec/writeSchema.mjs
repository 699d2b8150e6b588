// Writes schema/system.schema.json anew from the zod schema, after a build: npm run schema -w packages/spec
import { writeFileSync } from "node:fs";
import { systemSchema } from "./dist/schema/systemSchema.js";

const file = new URL("schema/system.schema.json", import.meta.url);
writeFileSync(file, `${JSON.stringify(systemSchema(), null, 2)}\n`);
