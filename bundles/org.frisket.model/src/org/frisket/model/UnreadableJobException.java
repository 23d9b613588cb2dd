package org.frisket.model;

import java.io.IOException;

/** A job file that cannot be read. The message names the file, the place in it if there is one, and the reason. */
public class UnreadableJobException extends IOException {

	private static final long serialVersionUID = 1L;

	private final String file;
	private final int line;
	private final int column;
	private final String reason;

	/**
	 * @param line   counted from 1; 0 if the trouble has no place
	 * @param column counted from 1; 0 if unknown
	 * @param reason in plain words, to follow "file, line 3: "
	 */
	public UnreadableJobException(String file, int line, int column, String reason, Throwable cause) {
		super(place(file, line, column) + ": " + reason, cause);
		this.file = file;
		this.line = line;
		this.column = column;
		this.reason = reason;
	}

	private static String place(String file, int line, int column) {
		if (line <= 0) {
			return file;
		}
		return file + ", line " + line + (column > 0 ? ", column " + column : "");
	}

	public String file() {
		return file;
	}

	/** Line of the file from 1, or 0 if the trouble has no place. */
	public int line() {
		return line;
	}

	/** Column of the line from 1, or 0 if unknown. */
	public int column() {
		return column;
	}

	public String reason() {
		return reason;
	}
}
