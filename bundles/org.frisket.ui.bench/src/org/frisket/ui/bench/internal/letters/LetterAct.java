package org.frisket.ui.bench.internal.letters;

/** What keys do to chosen letters, and which letter they choose. */
public enum LetterAct {

	NEXT, PREVIOUS, TURN_LEFT, TURN_RIGHT, TURN_FAR_LEFT, TURN_FAR_RIGHT, LARGER, SMALLER, MUCH_LARGER, MUCH_SMALLER, BACK;

	private static final double STEP_DEGREES = 1;
	private static final double FAR_DEGREES = 15;
	private static final double STEP = 1.01;
	private static final double FAR_STEP = 1.1;

	/** Degrees clockwise; 0 if it turns nothing. */
	double degrees() {
		return switch (this) {
		case TURN_LEFT -> -STEP_DEGREES;
		case TURN_RIGHT -> STEP_DEGREES;
		case TURN_FAR_LEFT -> -FAR_DEGREES;
		case TURN_FAR_RIGHT -> FAR_DEGREES;
		default -> 0;
		};
	}

	/** A factor; 1 if it scales nothing. */
	double factor() {
		return switch (this) {
		case LARGER -> STEP;
		case SMALLER -> 1 / STEP;
		case MUCH_LARGER -> FAR_STEP;
		case MUCH_SMALLER -> 1 / FAR_STEP;
		default -> 1;
		};
	}
}
