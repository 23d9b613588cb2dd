package org.frisket.typography;

import java.util.List;

/** What a studio is asked to set, and what gets into orders by mistake. */
final class ShapingTexts {

	/** Pairs that are kerned, ligatures, figures, stops. */
	static final List<String> LATIN = List.of("Harbour Lane", "AVATAR", "To Yo. We, Ty; P. L'", "office fjord",
			"fi fl ffi ffl ff fj", "1884 & 2026 (1/2)", "Wir \u2014 \u201Cquote\u201D", "Th st ct sp", "MILLIMETRE",
			"wijzigen", "Qu\u2019il vive!", "0123456789", "3.14, 1,000; 5:30", "20 \u20AC \u00A3 $ 7 \u00A5", "[a] {b} <c>",
			"A\u2013B \u2026 C\u00B7D", "25 % 5 \u2030", "\u00BFQu\u00E9? \u00A1S\u00ED!", "\u00AB guillemets \u00BB",
			"LT LY VA Wo Ta", "x  y", "kg\u00A0m\u00B2", "Stra\u00DFe \u1E9E", "r\u0001\u0007s", "tab\there",
			"soft\u00ADhyphen", "zero\u200Bwidth", "no\u2060break");

	/** Letters with accents, in one character and in two or more. */
	static final List<String> ACCENTS = List.of("\u00C5ngstr\u00F6m \u00E9tude na\u00EFve", "a\u0301e\u0308q\u0308",
			"r\u00E9sum\u00E9 \u0141\u00F3d\u017A", "re\u0301sume\u0301 \u0141o\u0301dz\u0301", "\u1EC7 e\u0323\u0302",
			"A\u030Angstro\u0308m", "i\u0307 \u0131 I\u0307", "x\u0305\u0332 \u0301 alone", "\u0218\u021B \u0122 \u0137",
			"\u010D\u0161\u017E \u0159", "o\u031B\u0301", "\u01C4 \u01C7");

	static final List<String> GREEK_AND_CYRILLIC = List.of("\u039A\u03B1\u03BB\u03B7\u03BC\u03AD\u03C1\u03B1",
			"\u1F08\u03B8\u03AE\u03BD\u03B1", "\u03A9\u03C1\u03B1 12:30", "\u03B1\u0301\u03B9\u0308\u03C2",
			"\u041F\u0440\u0438\u0432\u0435\u0442", "\u0429\u0443\u043A\u0430 \u0451\u0436", "\u0419 \u0418\u0306",
			"\u0413\u0430\u0442\u0430, \u0422\u043E");

	static final List<String> ARABIC_AND_HEBREW = List.of("\u0633\u0644\u0627\u0645",
			"\u0645\u064F\u062D\u064E\u0645\u0651\u062F", "\u0627\u0644\u0645\u064A\u0646\u0627\u0621",
			"\u0644\u0627 \u0644\u0623 \u0644\u0625", "\u06A9\u0634\u062A\u06CC", "\u0628\u200D \u200D\u0628\u200D",
			"\u0661\u0662\u0663 \u06F4\u06F5", "\u05E9\u05DC\u05D5\u05DD", "\u05E9\u05C1\u05B8\u05DC\u05D5\u05B9\u05DD",
			"\u05D0\u05F4\u05D1 \u05BE\u05D2", "\u05E0\u05DE\u05DC");

	static final List<String> DEVANAGARI = List.of("\u0928\u092E\u0938\u094D\u0924\u0947",
			"\u0915\u094D\u0937\u0924\u094D\u0930\u093F\u092F", "\u0939\u093F\u0928\u094D\u0926\u0940",
			"\u0936\u094D\u0930\u0940 \u0930\u094D\u0915", "\u0915\u093F\u0924\u093E\u092C", "\u0967\u0968\u0969",
			"\u0915\u094D\u200D\u0937 \u0915\u094D\u200C\u0937", "\u093F\u0915");

	/** Runs of both directions and of several scripts in one line. */
	static final List<String> MIXED = List.of("Pier \u05E9\u05DC\u05D5\u05DD 12", "\u0633\u0644\u0627\u0645 Ferry 7",
			"(\u05D0\u05D1\u05D2) a", "\u05D0 1/2 \u05D1 b", "Lane \u041F\u0440 \u039A\u03B1", "a \u0661\u0662 b",
			"\u202Babc \u05D0\u05D1\u202C d");

	/** No font here has glyphs for all of these. */
	static final List<String> STRANGE = List.of("\uD83D\uDE00 smile", "\uD83D\uDC69\u200D\uD83D\uDC67",
			"\uD83C\uDDE9\uD83C\uDDEA", "\u2764\uFE0F", "\u6E2F\u53E3", "\uE000 own", "\uFEFFmark", "\uD808\uDC00", "a\uFE0E");

	private ShapingTexts() {
	}

	static List<String> all() {
		return List.of(LATIN, ACCENTS, GREEK_AND_CYRILLIC, ARABIC_AND_HEBREW, DEVANAGARI, MIXED, STRANGE).stream()
				.flatMap(List::stream).toList();
	}
}
