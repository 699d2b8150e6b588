import type { Setting } from "./thirstline.js";

/** A command line whose whole outcome is kept. */
export interface Transcript {
  /** name of the kept file, without its ending */
  readonly name: string;
  readonly folder: Setting["folder"];
  readonly args: readonly string[];
}

const demo = (name: string, ...args: string[]): Transcript => ({ name, folder: "demo", args });
const files = (name: string, ...args: string[]): Transcript => ({ name, folder: "files", args });

/** Every kept outcome: good command lines and bad ones alike. */
export const transcripts: readonly Transcript[] = [
  demo("check-holds", "check", "heron.yaml"),
  demo("check-holds-us", "check", "heron.yaml", "--units", "us"),
  demo("check-tight", "check", "heron-finer.yaml"),
  demo("check-starves", "check", "heron-finer.yaml", "-t", "-10 degC"),
  demo("check-warm-and-cold", "check", "heron-finer.yaml", "--temperature", "15 degC", "--temperature", "-10 degC"),
  demo("check-many-temperatures", "check", "heron.yaml", ..."-20 -10 0 15 30".split(" ").map((at) => `-t${at} degC`)),
  demo("check-below-cloud-point", "check", "heron.yaml", "-t", "0 degF", "--units", "us"),
  demo("check-gravity", "check", "generator.yaml"),
  demo("check-gravity-soiled", "check", "generator-soiled.yaml"),
  demo("check-two-tanks", "check", "lorry.yaml"),
  demo("check-estimate", "check", "dewatering-paper.yaml"),
  demo("check-limit-assumed", "check", "crane.yaml"),
  demo("check-petrol-pulse-pump", "check", "workboat.yaml"),
  demo("check-boiling", "check", "workboat-winter-petrol.yaml"),
  demo("check-more-demand", "check", "heron.yaml", "--demand", "450 L/h"),
  files("check-relief-to-tank", "check", "relief-to-tank.yaml"),
  files("check-soiled", "check", "soiled.yaml", "-t", "15 degC", "-t", "0 degC"),
  files("check-shut", "check", "shut.yaml"),
  files("check-no-limit", "check", "no-limit.yaml"),
  files("check-several-files", "check", "soiled.yaml", "faulty.yaml", "shut.yaml"),
  demo("curve", "curve", "heron-finer.yaml"),
  demo("curve-us", "curve", "heron-finer.yaml", "--units", "us", "--to", "150 gal/h", "-t", "14 degF"),
  demo("curve-gravity", "curve", "generator-soiled.yaml"),
  demo("curve-estimate", "curve", "dewatering-paper.yaml"),
  files("curve-three-states", "curve", "soiled.yaml", "-t", "15 degC", "-t", "0 degC"),
  files("curve-relief-to-tank", "curve", "relief-to-tank.yaml"),
  files("curve-shut", "curve", "shut.yaml"),
  files("curve-csv", "curve", "soiled.yaml", "--csv", "--points", "4"),
  files("curve-csv-us", "curve", "soiled.yaml", "relief-to-tank.yaml", "--csv", "--points", "3", "--units", "us"),
  files("help", "--help"),
  files("help-check", "check", "--help"),
  files("help-curve", "curve", "-h"),
  files("no-command"),
  files("unknown-command", "chekc", "soiled.yaml"),
  files("file-for-command", "soiled.yaml"),
  files("no-file", "check"),
  files("bad-options", "check", "soiled.yaml", "--temprature", "5 degC", "--points", "3", "--json=yes", "--demand"),
  files(
    "bad-values",
    "curve",
    "soiled.yaml",
    "-t",
    "10",
    "--demand",
    "3 kPa",
    "--to",
    "x",
    "--points",
    "1",
    "--units",
    "uk",
  ),
  files("given-twice", "curve", "soiled.yaml", "--to", "1 L/h", "--to", "2 L/h"),
  files("bad-files", "check", "soild.yaml", "folder", "picture.bin", "faulty.yaml"),
];
