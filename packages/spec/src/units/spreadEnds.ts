import { measureUnit } from "./measures.js";
import { splitSpread } from "./splitSpread.js";
import { endsOf } from "./spreadQuantity.js";
