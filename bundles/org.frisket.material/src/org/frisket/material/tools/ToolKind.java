package org.frisket.material.tools;

import java.util.Locale;
import java.util.Optional;

import org.frisket.model.OperationKind;

/** Kinds of tools. They are stored by name. */
public enum ToolKind {
	BLADE, CREASING_WHEEL, PERFORATING_BLADE, PEN;

	/** As commands name it: {@code creasing-wheel}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** The kind of this word. */
	public static Optional<ToolKind> of(String word) {
		for (ToolKind kind : values()) {
			if (kind.word().equals(word)) {
				return Optional.of(kind);
			}
		}
		return Optional.empty();
	}

	/** What an operation is usually done with; empty for printing. */
	public static Optional<ToolKind> usual(OperationKind operation) {
		return switch (operation) {
		case CUT, KISS_CUT -> Optional.of(BLADE);
		case CREASE -> Optional.of(CREASING_WHEEL);
		case PERFORATE -> Optional.of(PERFORATING_BLADE);
		case DRAW -> Optional.of(PEN);
		case PRINT -> Optional.empty();
		};
	}
}
