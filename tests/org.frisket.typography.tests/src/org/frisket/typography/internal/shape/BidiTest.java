package org.frisket.typography.internal.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.frisket.typography.VisualOrder;
import org.frisket.typography.internal.text.UnicodeTestFile;
import org.junit.jupiter.api.Test;

import com.ibm.icu.text.Bidi;

/**
 * Levels and order of characters against the tests that Unicode publishes for UAX #9: those in which the paragraph runs
 * the way of its first strong character, as it does here.
 */
class BidiTest {

	private static final String OF_ITS_FIRST_STRONG_CHARACTER = "2";
	private static final String REMOVED = "x";
	/** LRE, RLE, PDF, LRO, RLO; nobody types them. */
	private static final String EMBEDDING = ".*202[A-E].*";
	private static final String EMBEDDINGS = "embeddings closed beside isolates or brackets";
	private static final String MARKS = "a mark on a closing bracket that ends the text";

	/** Where ICU 77, and the Java runtime as well, are not as Unicode 15 has it: 25 of 45,832 lines. */
	private static final Map<String, Integer> OTHERWISE = Map.of(EMBEDDINGS, 20, MARKS, 5);

	@Test
	void charactersStandAsUnicodeSays() throws Exception {
		int compared = 0;
		int lines = 0;
		Map<String, Integer> otherwise = new TreeMap<>();
		for (String line : UnicodeTestFile.lines("BidiCharacterTest.txt")) {
			Case each = Case.of(line);
			if (each.isComparable()) {
				compared++;
				if (!each.levels().equals(each.levelsHere()) || !each.order().equals(each.orderHere())) {
					otherwise.merge(each.kind(), 1, Integer::sum);
				}
				if (each.isOneLine()) {
					lines++;
					assertEquals(each.orderHere(), each.orderOfCaret(), each.codes());
				}
			}
		}
		assertEquals(45_832, compared);
		assertTrue(lines > 30_000, lines + " are of one line");
		assertEquals(new TreeMap<>(OTHERWISE), otherwise);
	}

	/**
	 * @param codes  of the characters in hexadecimal
	 * @param starts index of each character
	 * @param levels of each character, for some {@value #REMOVED}
	 * @param order  numbers of the characters that are not removed, from left to right
	 */
	private record Case(String codes, String text, List<Integer> starts, String direction, int base, List<String> levels,
			String order) {

		static Case of(String line) {
			String[] fields = line.split(";", -1);
			StringBuilder text = new StringBuilder();
			List<Integer> starts = new ArrayList<>();
			for (String code : fields[0].split(" ")) {
				starts.add(text.length());
				text.appendCodePoint(Integer.parseInt(code, 16));
			}
			return new Case(fields[0], text.toString(), starts, fields[1], Integer.parseInt(fields[2]),
					List.of(fields[3].split(" ")), fields[4]);
		}

		private Bidi bidi() {
			return Run.bidi(text.toCharArray());
		}

		/** Whether its paragraph runs as it would by itself. */
		boolean isComparable() {
			Bidi bidi = bidi();
			int baseHere = bidi == null ? 0 : bidi.getBaseLevel();
			if (direction.equals(OF_ITS_FIRST_STRONG_CHARACTER)) {
				assertEquals(base, baseHere, codes);
			}
			return base == baseHere;
		}

		List<String> levelsHere() {
			Bidi bidi = bidi();
			List<String> here = new ArrayList<>();
			for (int i = 0; i < levels.size(); i++) {
				here.add(levels.get(i).equals(REMOVED) ? REMOVED
						: Integer.toString(bidi == null ? 0 : bidi.getLevelAt(starts.get(i))));
			}
			return here;
		}

		String orderHere() {
			List<String> here = new ArrayList<>();
			for (Run run : Run.of(text.toCharArray())) {
				List<String> inRun = new ArrayList<>();
				for (int i = 0; i < levels.size(); i++) {
					if (starts.get(i) >= run.start() && starts.get(i) < run.limit() && !levels.get(i).equals(REMOVED)) {
						inRun.add(run.rightToLeft() ? 0 : inRun.size(), Integer.toString(i));
					}
				}
				here.addAll(inRun);
			}
			return String.join(" ", here);
		}

		/** The caret's order is asked for line by line. */
		boolean isOneLine() {
			return text.chars().noneMatch(c -> c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029);
		}

		/** As what a caret goes by has it. */
		String orderOfCaret() {
			List<String> here = new ArrayList<>();
			for (int index : VisualOrder.of(text, 0, text.length()).fromLeft()) {
				int number = starts.indexOf(index);
				if (number >= 0 && !levels.get(number).equals(REMOVED)) {
					here.add(Integer.toString(number));
				}
			}
			return String.join(" ", here);
		}

		String kind() {
			if (codes.matches(EMBEDDING)) {
				return EMBEDDINGS;
			}
			int last = text.codePointBefore(text.length());
			return Character.getType(last) == Character.NON_SPACING_MARK
					|| Character.getType(last) == Character.ENCLOSING_MARK ? MARKS : codes + ": " + levels + " but "
							+ levelsHere() + ", " + order + " but " + orderHere();
		}
	}
}
