import { z } from "zod";

// Before any schema is made: zod would else try whether it may compile code, and a page's security policy reports that.
z.config({ jitless: true });

export { z };
