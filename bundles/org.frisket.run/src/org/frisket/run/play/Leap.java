package org.frisket.run.play;

/** How far one jump within a run goes. */
public enum Leap {
	/** To where a tool is set down. */
	STROKE,
	/** To the first stroke of another part. */
	PART,
	/** To where another tool is put in. */
	TOOL
}
