package org.frisket.imports.dxf;

/**
 * A group code and its value.
 *
 * @param line of the value, from 1
 */
record Group(int code, String value, int line) {

	boolean is(int otherCode, String otherValue) {
		return code == otherCode && value.equalsIgnoreCase(otherValue);
	}
}
