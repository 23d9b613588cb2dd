package org.frisket.export.dxf;

import java.util.List;

import org.frisket.export.OperationInk;
import org.frisket.model.OperationKind;

/** Patterns of lines, those in which operations are shown. */
enum LineType {

	CONTINUOUS("Solid line", OperationKind.CUT), KISS_CUT("Kiss cut ____ _ ____ _", OperationKind.KISS_CUT),
	CREASE("Crease ____  ____  ____", OperationKind.CREASE), PERFORATE("Perforate . . . . .", OperationKind.PERFORATE);

	private final String look;
	private final OperationKind kind;

	LineType(String look, OperationKind kind) {
		this.look = look;
		this.kind = kind;
	}

	static LineType of(OperationKind kind) {
		return switch (kind) {
		case KISS_CUT -> KISS_CUT;
		case CREASE -> CREASE;
		case PERFORATE -> PERFORATE;
		case CUT, DRAW, PRINT -> CONTINUOUS;
		};
	}

	/** As words show it. */
	String look() {
		return look;
	}

	/** Dashes and gaps in mm; empty for an unbroken line. */
	List<Double> pattern() {
		return OperationInk.of(kind).pattern();
	}
}
