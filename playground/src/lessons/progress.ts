const KEY = "thirstline/1 lessons";

/** How far a learner has come with a lesson: a first prediction made, or the second case answered rightly. */
export type Stage = "begun" | "done";

/** Stages by the lessons' ids; a lesson that was not opened has none. */
export type Progress = Readonly<Record<string, Stage>>;

/** What this browser has kept; nothing where it keeps nothing, or something that cannot be read. */
export function keptProgress(): Progress {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(KEY) ?? "{}");
    if (typeof found !== "object" || found === null) return {};
    return Object.fromEntries(
      Object.entries(found).filter((entry): entry is [string, Stage] => ["begun", "done"].includes(entry[1] as string)),
    );
  } catch {
    return {};
  }
}

/** The progress with a lesson at a stage, kept in this browser and nowhere else; what is done stays done. */
export function withStage(progress: Progress, id: string, stage: Stage): Progress {
  if (progress[id] === "done") return progress;
  const next = { ...progress, [id]: stage };
  try {
    localStorage.setItem(KEY, JSON.stringify(next));
  } catch {
    // Full or refused: the lessons work without.
  }
  return next;
}

/** Forgets all of it. */
export function forgetProgress(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Nothing is kept where nothing can be.
  }
}
