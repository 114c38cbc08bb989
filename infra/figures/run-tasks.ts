import { createTaskRunner, type OutcomeOf, type Task } from "./task.ts";

/** Tasks of one kind. */
export type TasksOf<K extends Task["kind"]> = readonly Extract<Task, { kind: K }>[];

/** Does tasks of one kind and gives their outcomes in the order of the tasks; `what` they are, for who follows. */
export type RunTasks = <K extends Task["kind"]>(
  tasks: TasksOf<K>,
  what: string,
) => Promise<readonly OutcomeOf[K][]>;

/** One after the other, here, in silence. */
export const runHere: RunTasks = async (tasks) => tasks.map(createTaskRunner());
