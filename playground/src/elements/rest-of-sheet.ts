// What the sheet fetches once its path is painted.
import "./answer-figures.js";
import "./cold-map.js";
import "./filter-controls.js";
import "./life-panel.js";
import "./part-editor.js";
import "./particle-chart.js";
import "./parts-table.js";
import "./path-saves.js";
import "./pinned-variants.js";
import "./vacuum-chart.js";

export { LifeWork } from "../life/LifeWork.js";
export { AfterFrame } from "../model/AfterFrame.js";
export * as pathTools from "../path/pathTools.js";
export { checkFigures } from "../working/checkFigures.js";
