package org.frisket.material.trials;

import java.util.Locale;
import java.util.Optional;

/** What came of a trial. Stored by name. */
public enum Verdict {
	/** As it should be: the piece lifts out, its corners meet, the carrier is whole. */
	THROUGH,
	/** The blade did not come through. */
	NOT_THROUGH,
	/** The stock was torn. It says nothing of how deep the blade went. */
	TORN,
	/** It came through and cut the carrier too. */
	CARRIER_CUT,
	/** It came through, and the corners came up. */
	CORNERS_LIFTED;

	public boolean isGood() {
		return this == THROUGH;
	}

	/** Whether the verdict says how deep the blade went. */
	public boolean tellsDepth() {
		return this != TORN;
	}

	/** Whether the blade came through the stock, as far as the verdict tells. */
	public boolean cutsThrough() {
		return this == THROUGH || this == CARRIER_CUT || this == CORNERS_LIFTED;
	}

	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	public static Optional<Verdict> of(String word) {
		for (Verdict each : values()) {
			if (each.word().equals(word)) {
				return Optional.of(each);
			}
		}
		return Optional.empty();
	}

	/** In the user's language. */
	public String text() {
		return switch (this) {
		case THROUGH -> Messages.Verdict_through;
		case NOT_THROUGH -> Messages.Verdict_notThrough;
		case TORN -> Messages.Verdict_torn;
		case CARRIER_CUT -> Messages.Verdict_carrierCut;
		case CORNERS_LIFTED -> Messages.Verdict_cornersLifted;
		};
	}
}
