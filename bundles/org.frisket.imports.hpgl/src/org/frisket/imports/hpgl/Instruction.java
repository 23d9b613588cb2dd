package org.frisket.imports.hpgl;

import org.frisket.geometry.Point;

/**
 * A mnemonic with its parameters.
 *
 * @param raw      what stands behind {@code PE}, which packs its numbers; empty for others
 * @param position of the mnemonic in the file, in bytes from 1
 */
record Instruction(String mnemonic, double[] values, String raw, long position) {

	/** 0 where the parameter is missing. */
	double value(int index) {
		return index < values.length ? values[index] : 0;
	}

	/** Of two values. */
	Point point(int index) {
		return new Point(value(index), value(index + 1));
	}
}
