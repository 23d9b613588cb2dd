package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.swt.graphics.RGB;
import org.frisket.ui.ThemeColour;
import org.junit.jupiter.api.Test;

/** Text has a contrast of 4.5 at least, and lines and marks of 3, on every ground they are painted on, light or dark. */
class ContrastUiTest {

	private static final double TEXT = 4.5;
	private static final double MARK = 3;
	/** As much of the accent lies on a ruler where the selection is. */
	private static final double BAND = 60 / 255.0;
	private static final List<Appearance> APPEARANCES = List.of(Appearance.LIGHT, Appearance.DARK);

	/** Grounds, edges and shadows, which say nothing by themselves. */
	private static final Set<ThemeColour> QUIET = EnumSet.of(ThemeColour.BENCH_DESK, ThemeColour.BENCH_SHEET,
			ThemeColour.BENCH_SHEET_EDGE, ThemeColour.BENCH_SHADOW, ThemeColour.BENCH_STOCK, ThemeColour.BENCH_TAG,
			ThemeColour.BENCH_RULER);

	/** A colour on a ground, with the contrast that it needs there. */
	private record Use(ThemeColour colour, String groundName, Function<Appearance, RGB> ground, double needed) {

		static Use on(ThemeColour colour, ThemeColour ground, double needed) {
			return new Use(colour, ground.name(), appearance -> appearance.of(ground), needed);
		}
	}

	private static List<Use> uses() {
		List<Use> uses = new ArrayList<>();
		for (ThemeColour colour : ThemeColour.values()) {
			if (colour.name().startsWith("OPERATION")) {
				// their names are written in their hues
				uses.add(Use.on(colour, ThemeColour.BENCH_SHEET, TEXT));
			}
		}
		// the numbers of the flags are as pale as the sheet, and the poles lie on a casing of that colour
		for (ThemeColour flag : List.of(ThemeColour.FINDING_BLOCKING, ThemeColour.FINDING_CAUTION,
				ThemeColour.FINDING_NOTE)) {
			uses.add(Use.on(flag, ThemeColour.BENCH_SHEET, TEXT));
		}
		for (ThemeColour crossing : List.of(ThemeColour.BENCH_SELECTION, ThemeColour.BENCH_GUIDE)) {
			uses.add(Use.on(crossing, ThemeColour.BENCH_SHEET, MARK));
			uses.add(Use.on(crossing, ThemeColour.BENCH_DESK, MARK));
		}
		uses.add(Use.on(ThemeColour.BENCH_GRID, ThemeColour.BENCH_SHEET, MARK));
		uses.add(Use.on(ThemeColour.BENCH_REMOVED, ThemeColour.BENCH_SHEET, MARK));
		uses.add(Use.on(ThemeColour.BENCH_HINT, ThemeColour.BENCH_SHEET, TEXT));
		uses.add(Use.on(ThemeColour.BENCH_INK, ThemeColour.BENCH_SHEET, TEXT));
		uses.add(Use.on(ThemeColour.BENCH_INK, ThemeColour.BENCH_STOCK, MARK));
		uses.add(Use.on(ThemeColour.BENCH_TAG_TEXT, ThemeColour.BENCH_TAG, TEXT));
		uses.add(Use.on(ThemeColour.BENCH_RULER_MARK, ThemeColour.BENCH_RULER, TEXT));
		uses.add(new Use(ThemeColour.BENCH_RULER_MARK, "the band of a ruler",
				a -> Contrast.over(a.of(ThemeColour.BENCH_RULER), a.of(ThemeColour.BENCH_ACCENT), BAND), TEXT));
		uses.add(Use.on(ThemeColour.BENCH_ACCENT, ThemeColour.BENCH_RULER, MARK));
		uses.add(new Use(ThemeColour.BENCH_ACCENT, "the window", Appearance::window, MARK));
		uses.add(new Use(ThemeColour.BENCH_ACCENT, "lists", Appearance::list, MARK));
		uses.add(new Use(ThemeColour.FINDING_MESSAGE, "the window", Appearance::window, TEXT));
		uses.add(new Use(ThemeColour.FINDING_MESSAGE, "fields", Appearance::list, TEXT));
		return uses;
	}

	@Test
	void textAndLinesStandOutFromEveryGroundTheyAreOn() {
		List<String> weak = new ArrayList<>();
		for (Appearance appearance : APPEARANCES) {
			for (Use use : uses()) {
				double ratio = Contrast.ratio(appearance.of(use.colour), use.ground.apply(appearance));
				if (ratio < use.needed) {
					weak.add("%s on %s, %s: %.2f of %.1f".formatted(use.colour, use.groundName, appearance.name(), ratio,
							use.needed));
				}
			}
		}
		assertEquals(List.of(), weak);
	}

	@Test
	void everyColourIsLookedAt() {
		Set<ThemeColour> left = EnumSet.allOf(ThemeColour.class);
		left.removeAll(QUIET);
		uses().forEach(use -> left.remove(use.colour));
		assertEquals(Set.of(), left);
	}

	/** What is worked out here is what the workbench shows. */
	@Test
	void definitionsComeOutAsInTheWorkbench() {
		for (ThemeColour colour : ThemeColour.values()) {
			RGB shown = colour.colour().getRGB();
			RGB workedOut = Appearance.running().of(colour);
			int off = Math.max(Math.abs(shown.red - workedOut.red),
					Math.max(Math.abs(shown.green - workedOut.green), Math.abs(shown.blue - workedOut.blue)));
			assertEquals(0, off / 2, colour + ": " + shown + " for " + workedOut);
		}
	}
}
