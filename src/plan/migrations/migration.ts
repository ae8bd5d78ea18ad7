/** A record of a document that no schema has seen yet. */
export type UncheckedRecord = Readonly<Record<string, unknown>>;

/** One step from a released version of the document to the next. What it does not understand it leaves for the schema to name. */
export interface Migration {
  /** The version it starts from; it ends at the next one. */
  readonly from: number;
  /** For the content of a plan: the document itself, and that of every revision in it. */
  readonly migrate: (content: UncheckedRecord) => UncheckedRecord;
  /** For what stands beside the content: revisions, the build log. */
  readonly migrateRest?: (document: UncheckedRecord) => UncheckedRecord;
}
