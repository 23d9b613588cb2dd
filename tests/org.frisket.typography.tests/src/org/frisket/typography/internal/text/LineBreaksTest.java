package org.frisket.typography.internal.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.VersionInfo;

/** Against the tests that Unicode publishes for UAX #14 and UAX #29. */
class LineBreaksTest {

	/**
	 * The rules here are those of Unicode 16 (ICU 77), the tests those of 15: between them UAX #14 changed where the
	 * lines below show it. Each is told by its characters, with how many lines of the test it concerns.
	 */
	private static final Map<String, Integer> CHANGED = new LinkedHashMap<>();

	static {
		// LB20a: no break after a hyphen that begins a line or a word
		CHANGED.put("002D (0308 )?(0023|00A7|50005|0E01) ", 8);
		// LB25: no break between a comma or full stop and a digit
		CHANGED.put("002C (0308 )?0030 |(.* )?00[46]1 002E 003\\d .*", 13);
		// LB21a: a break after a hyphen between Hebrew letters
		CHANGED.put("05D0 002D 05D0 ", 1);
		// LB15, taken back in 15.1: a straight quotation mark and blanks may stand before an opening bracket's line
		CHANGED.put("0022 (0308 )?0020 (2329|0028) ", 4);
		// LB15c: a break before a decimal mark that leads a number
		CHANGED.put("0065 0071 0075 0061 006C 0073 0020 002E 0033 .*", 1);
		// LB15a and LB15b: closing and opening quotation marks beside blanks
		CHANGED.put("0061 006D 0062 0069 0067 0075 .*00AB .*00BB .*", 4);
	}

	/** The text of a line of the test, and where it may be parted, its end among them. */
	private record Case(String codes, String text, TreeSet<Integer> places) {

		static Case of(String line) {
			StringBuilder codes = new StringBuilder();
			StringBuilder text = new StringBuilder();
			TreeSet<Integer> places = new TreeSet<>();
			for (String word : UnicodeTestFile.withoutComment(line).split("\\s+")) {
				if (word.equals("\u00F7")) {
					places.add(text.length());
				} else if (!word.equals("\u00D7")) {
					text.appendCodePoint(Integer.parseInt(word, 16));
					codes.append(word).append(' ');
				}
			}
			places.remove(0);
			return new Case(codes.toString(), text.toString(), places);
		}
	}

	private static List<Case> cases(String file) throws Exception {
		return UnicodeTestFile.lines(file).stream().map(Case::of).toList();
	}

	@Test
	void versionsAreThoseThatWereCompared() {
		assertEquals("16.0.0.0", UCharacter.getUnicodeVersion().toString(), "look at the list of changed rules again");
		assertEquals(77, VersionInfo.ICU_VERSION.getMajor());
	}

	@Test
	void linesArePartedWhereUnicodeSays() throws Exception {
		List<Case> cases = cases("auxiliary/LineBreakTest.txt");
		assertEquals(7654, cases.size());
		Map<String, Integer> changed = new LinkedHashMap<>();
		List<String> wrong = new ArrayList<>();
		for (Case each : cases) {
			TreeSet<Integer> places = new TreeSet<>();
			for (int place : LineBreaks.places(each.text())) {
				places.add(place);
			}
			// no character that is seen as one is parted, whatever stands before it
			each.places().retainAll(characters(each.text()));
			if (!places.equals(each.places())) {
				CHANGED.keySet().stream().filter(rule -> Pattern.matches(rule, each.codes())).findFirst().ifPresentOrElse(
						rule -> changed.merge(rule, 1, Integer::sum),
						() -> wrong.add(each.codes() + each.places() + " but " + places));
			}
		}
		assertEquals(List.of(), wrong);
		assertEquals(CHANGED, changed);
	}

	@Test
	void charactersAreThoseOfUnicode() throws Exception {
		List<Case> cases = cases("auxiliary/GraphemeBreakTest.txt");
		assertEquals(602, cases.size());
		for (Case each : cases) {
			assertEquals(each.places(), characters(each.text()), each.codes());
		}
	}

	private static TreeSet<Integer> characters(String text) {
		BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
		characters.setText(text);
		TreeSet<Integer> places = new TreeSet<>();
		for (int at = characters.next(); at != BreakIterator.DONE; at = characters.next()) {
			places.add(at);
		}
		return places;
	}

	@Test
	void lineEndsBeforeNoAccentOfABlank() {
		assertArrayEquals(new int[] { 3 }, LineBreaks.places("a \u0301"));
		assertArrayEquals(new int[] { 2, 3 }, LineBreaks.places("a b"));
		assertArrayEquals(new int[] { }, LineBreaks.places(""));
		// Unicode's own rule alone would part them
		BreakIterator lines = BreakIterator.getLineInstance(Locale.ROOT);
		lines.setText("a \u0301");
		assertTrue(lines.isBoundary(2));
	}
}
