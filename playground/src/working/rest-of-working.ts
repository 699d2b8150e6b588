// What is fetched when the first figure is opened.
import "./working-panel.js";

export { WhyController } from "./WhyController.js";
