// What the sheet fetches once its path is painted.
import "./cold-map.js";
import "./part-editor.js";
import "./pinned-variants.js";
import "./vacuum-chart.js";
