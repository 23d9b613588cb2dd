package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.layout.Arc;
import org.frisket.typography.layout.ArcLayout;
import org.frisket.typography.layout.PathLayout;
import org.junit.jupiter.api.Test;

class CurveJoinerTest {

	private static final Tolerance FINE = new Tolerance(0.01);

	private static SetText set(String text, Alignment alignment) throws Exception {
		return TextSetter.set(text, Fonts.serif(), Setting.ofCapHeight(20).withAlignment(alignment), Monitor.NONE);
	}

	private static int pieces(SetText text) {
		return new OutlineCleaner().clean(text.outline(), FillRule.NON_ZERO, FINE, Monitor.NONE).region().pieces()
				.size();
	}

	@Test
	void wordJoinedStraightComesApartAndThisOneDoesNot() throws Exception {
		SetText text = set("HHHHH", Alignment.CENTRE);
		Arc arc = new Arc(30, Arc.Direction.COUNTER_CLOCKWISE, Arc.Side.INSIDE, 180);
		UnaryOperator<SetText> bend = t -> ArcLayout.along(t, arc).text();
		Joined joined = CurveJoiner.join(text, bend, 0.4, false, FINE, Monitor.NONE);
		assertEquals(List.of(), joined.loose());
		assertEquals(1, pieces(bend.apply(joined.text())));
		SetText over = set("OCOCO", Alignment.CENTRE);
		UnaryOperator<SetText> tight = t -> ArcLayout.along(t, Arc.over(25)).text();
		assertTrue(pieces(tight.apply(Joiner.join(over, 0.4, FINE, Monitor.NONE).text())) > 1);
		assertEquals(1, pieces(tight.apply(CurveJoiner.join(over, tight, 0.4, false, FINE, Monitor.NONE).text())));
	}

	@Test
	void overlapIsTheTouchAlongTheCurve() throws Exception {
		SetText text = set("OO", Alignment.LEFT);
		UnaryOperator<SetText> bend = t -> ArcLayout.along(t, Arc.over(50)).text();
		SetText joined = CurveJoiner.join(text, bend, 0.5, false, FINE, Monitor.NONE).text();
		for (double apart : new double[] { 0.45, 0.55 }) {
			Letter second = joined.letters().get(1).movedBy(apart, 0);
			SetText bent = bend.apply(joined.withLetters(List.of(joined.letters().get(0), second)));
			boolean meet = Areas.meet(Areas.area(bent.letters().get(0).outline()),
					Areas.area(bent.letters().get(1).outline()));
			assertEquals(apart < 0.5, meet, "moved apart by " + apart);
		}
	}

	@Test
	void onAStraightPathItIsTheJoiner() throws Exception {
		SetText text = set("Harbour Lane", Alignment.LEFT);
		Contour line = PathData.parse("M0 0H500").contours().get(0);
		UnaryOperator<SetText> bend = t -> PathLayout.along(t, line, PathLayout.Options.PLAIN).text();
		Joined curved = CurveJoiner.join(text, bend, 0.4, false, FINE, Monitor.NONE);
		Joined straight = Joiner.join(text, 0.4, FINE, Monitor.NONE);
		for (int i = 0; i < curved.shifts().size(); i++) {
			assertEquals(straight.shifts().get(i), curved.shifts().get(i), 0.15, "letter " + i);
		}
	}

	@Test
	void centredWordOnAWaveIsJoinedWhereItEndsUp() throws Exception {
		SetText text = set("COCOON", Alignment.CENTRE);
		Contour wave = PathData.parse("M0 0C30 -60 60 60 90 0S150 -60 180 0").contours().get(0);
		PathLayout.Options middle = new PathLayout.Options(wave.length() / 2, false, false);
		UnaryOperator<SetText> bend = t -> PathLayout.along(t, wave, middle).text();
		Joined joined = CurveJoiner.join(text, bend, 0.5, false, FINE, Monitor.NONE);
		assertEquals(1, pieces(bend.apply(joined.text())));
		TextLine line = joined.text().lines().get(0);
		assertTrue(line.width() < text.lines().get(0).width());
	}

	@Test
	void wordsStayApartUnlessClosed() throws Exception {
		SetText text = set("HH HH", Alignment.CENTRE);
		UnaryOperator<SetText> bend = t -> ArcLayout.along(t, Arc.over(80)).text();
		assertEquals(2, pieces(bend.apply(CurveJoiner.join(text, bend, 0.5, false, FINE, Monitor.NONE).text())));
		assertEquals(1, pieces(bend.apply(CurveJoiner.join(text, bend, 0.5, true, FINE, Monitor.NONE).text())));
	}

	@Test
	void whatCannotMeetIsLoose() throws Exception {
		SetText text = set("_'", Alignment.LEFT);
		UnaryOperator<SetText> bend = t -> ArcLayout.along(t, Arc.over(80)).text();
		Joined joined = CurveJoiner.join(text, bend, 0.5, false, FINE, Monitor.NONE);
		assertEquals(List.of(1), joined.loose());
		assertEquals(text.letters().get(1).origin().x(), joined.text().letters().get(1).origin().x(), 1e-9);
		assertThrows(IllegalArgumentException.class,
				() -> CurveJoiner.join(text, bend, 0, false, FINE, Monitor.NONE));
		assertFalse(joined.text().letters().isEmpty());
	}
}
