package org.frisket.prepare.repair;

import java.util.HashMap;
import java.util.Map;

/** What was put right, in the user's language. */
public final class RepairWords {

	private static final Map<String, String> WORDS = new HashMap<>();

	static {
		WORDS.put("contour-closed", Messages.RepairWords_contourClosed);
		WORDS.put("contour-left-open", Messages.RepairWords_contourLeftOpen);
		WORDS.put("crossing-resolved", Messages.RepairWords_crossingResolved);
		WORDS.put("curve-simplified", Messages.RepairWords_curveSimplified);
		WORDS.put("doubled-line-removed", Messages.RepairWords_doubledLineRemoved);
		WORDS.put("duplicate-removed", Messages.RepairWords_duplicateRemoved);
		WORDS.put("ends-joined", Messages.RepairWords_endsJoined);
		WORDS.put("gap-filled", Messages.RepairWords_gapFilled);
		WORDS.put("gap-healed", Messages.RepairWords_gapHealed);
		WORDS.put("lines-levelled", Messages.RepairWords_linesLevelled);
		WORDS.put("short-line-removed", Messages.RepairWords_shortLineRemoved);
		WORDS.put("short-segment-removed", Messages.RepairWords_shortSegmentRemoved);
		WORDS.put("sliver-removed", Messages.RepairWords_sliverRemoved);
		WORDS.put("speck-removed", Messages.RepairWords_speckRemoved);
		WORDS.put("spike-removed", Messages.RepairWords_spikeRemoved);
		WORDS.put("touch-parted", Messages.RepairWords_touchParted);
		WORDS.put("winding-fixed", Messages.RepairWords_windingFixed);
	}

	private RepairWords() {
	}

	/** Of a kind of mend; of one that a studio's own step brings, its words as they are. */
	public static String of(String kind) {
		String known = WORDS.get(kind);
		if (known != null || kind.isEmpty()) {
			return known == null ? kind : known;
		}
		return Character.toUpperCase(kind.charAt(0)) + kind.substring(1).replace('-', ' ');
	}
}
