package org.frisket.prepare;

/** How much a finding matters, the gravest first. */
public enum Severity {

	/** The sheet cannot be run like this. */
	BLOCKING,
	/** It can be run, but is likely to disappoint. */
	CAUTION,
	/** Worth knowing. */
	NOTE
}
