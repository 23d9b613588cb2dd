package org.frisket.imports.svg;

import org.w3c.css.sac.LexicalUnit;

/** Values of properties as text again. */
final class LexicalText {

	private LexicalText() {
	}

	static String of(LexicalUnit first) {
		StringBuilder text = new StringBuilder();
		for (LexicalUnit unit = first; unit != null; unit = unit.getNextLexicalUnit()) {
			String one = one(unit);
			if (!text.isEmpty() && !one.equals(",") && !one.equals("/")) {
				text.append(' ');
			}
			text.append(one);
		}
		return text.toString();
	}

	private static String one(LexicalUnit unit) {
		return switch (unit.getLexicalUnitType()) {
		case LexicalUnit.SAC_OPERATOR_COMMA -> ",";
		case LexicalUnit.SAC_OPERATOR_SLASH -> "/";
		case LexicalUnit.SAC_INHERIT -> "inherit";
		case LexicalUnit.SAC_INTEGER -> Integer.toString(unit.getIntegerValue());
		case LexicalUnit.SAC_IDENT, LexicalUnit.SAC_STRING_VALUE -> unit.getStringValue();
		case LexicalUnit.SAC_URI -> "url(" + unit.getStringValue() + ")";
		case LexicalUnit.SAC_RGBCOLOR, LexicalUnit.SAC_FUNCTION, LexicalUnit.SAC_RECT_FUNCTION ->
			unit.getFunctionName() + "(" + of(unit.getParameters()) + ")";
		case LexicalUnit.SAC_PERCENTAGE -> unit.getFloatValue() + "%";
		default -> number(unit);
		};
	}

	private static String number(LexicalUnit unit) {
		try {
			return unit.getFloatValue() + unit.getDimensionUnitText();
		} catch (IllegalStateException e) {
			return "";
		}
	}
}
