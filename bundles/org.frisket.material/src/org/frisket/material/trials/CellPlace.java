package org.frisket.material.trials;

import java.util.Comparator;

/** A cell of a test sheet; columns and rows are counted from 0. Written {@code B3}: column B, third row. */
public record CellPlace(int column, int row) implements Comparable<CellPlace> {

	private static final Comparator<CellPlace> BY_ROWS = Comparator.comparingInt(CellPlace::row)
			.thenComparingInt(CellPlace::column);

	@Override
	public int compareTo(CellPlace other) {
		return BY_ROWS.compare(this, other);
	}

	@Override
	public String toString() {
		return (char) ('A' + column) + Integer.toString(row + 1);
	}
}
