package org.frisket.typography.index;

import java.lang.Character.UnicodeBlock;
import java.lang.Character.UnicodeScript;
import java.util.BitSet;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

import org.frisket.typography.face.CodePoints;

/**
 * Which scripts (UAX #24) a set of characters can set. A script counts if a quarter of the letters in its main block
 * are there: a font with an omega among its symbols does not set Greek. The main block is the one that holds the
 * script's first letter; for Han it is the unified ideographs, for Hangul the syllables, of both a tenth is enough.
 */
public final class Scripts {

	private static final int LAST = 0x1FFFF;
	private static final int SHARE = 4;
	private static final int SHARE_OF_MANY = 10;

	private static final Map<UnicodeScript, BitSet> LETTERS = letters();

	private Scripts() {
	}

	private static Map<UnicodeScript, BitSet> letters() {
		Map<UnicodeScript, UnicodeBlock> blocks = new EnumMap<>(UnicodeScript.class);
		blocks.put(UnicodeScript.HAN, UnicodeBlock.CJK_UNIFIED_IDEOGRAPHS);
		blocks.put(UnicodeScript.HANGUL, UnicodeBlock.HANGUL_SYLLABLES);
		Map<UnicodeScript, BitSet> letters = new EnumMap<>(UnicodeScript.class);
		for (int c = 0; c <= LAST; c++) {
			UnicodeScript script = UnicodeScript.of(c);
			if (Character.isLetter(c) && script != UnicodeScript.COMMON && script != UnicodeScript.INHERITED) {
				UnicodeBlock block = UnicodeBlock.of(c);
				UnicodeBlock main = blocks.putIfAbsent(script, block);
				if (main == null || main.equals(block)) {
					letters.computeIfAbsent(script, s -> new BitSet()).set(c);
				}
			}
		}
		return letters;
	}

	public static Set<UnicodeScript> of(CodePoints characters) {
		Map<UnicodeScript, Integer> present = new EnumMap<>(UnicodeScript.class);
		characters.forEach(c -> {
			UnicodeScript script = UnicodeScript.of(c);
			BitSet letters = LETTERS.get(script);
			if (letters != null && letters.get(c)) {
				present.merge(script, 1, Integer::sum);
			}
		});
		Set<UnicodeScript> scripts = EnumSet.noneOf(UnicodeScript.class);
		present.forEach((script, count) -> {
			boolean many = script == UnicodeScript.HAN || script == UnicodeScript.HANGUL;
			if (count * (many ? SHARE_OF_MANY : SHARE) >= LETTERS.get(script).cardinality()) {
				scripts.add(script);
			}
		});
		return Collections.unmodifiableSet(scripts);
	}
}
