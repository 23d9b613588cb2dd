package org.frisket.print.marks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.MarkKind;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.Resolution;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks in simulated photographs, whose map is known. */
class MarkFinderTest {

	private static final double DPI = 300;
	private static final double SCALE = DPI / 25.4;
	private static final double WIDTH = 72;
	private static final double HEIGHT = 50;
	private static final int ROOM = 60;

	private static MarkPlan plan(MarkKind kind) throws RegisterException {
		return new MarkPlacement(new MarkDesign(kind, 5, 1, 3), 4, 4).propose(WIDTH, HEIGHT, 4,
				List.of(new Bounds(16, 14, 56, 36)));
	}

	/** The sheet round its middle, which comes to the middle of the picture. @param degrees of its turn */
	private static Photograph photograph(MarkPlan plan, double degrees, boolean mirrored, double tiltX, double tiltY) {
		Projection tilt = new Projection(1, 0, 0, 0, 1, 0, tiltX, tiltY, 1);
		double radians = Math.toRadians(degrees);
		int width = (int) (SCALE * (WIDTH * Math.abs(Math.cos(radians)) + HEIGHT * Math.abs(Math.sin(radians)))) + 2 * ROOM;
		int height = (int) (SCALE * (WIDTH * Math.abs(Math.sin(radians)) + HEIGHT * Math.abs(Math.cos(radians)))) + 2 * ROOM;
		Transform before = Transform.translation(-WIDTH / 2, -HEIGHT / 2)
				.then(Transform.scaling(mirrored ? -SCALE : SCALE, SCALE)).then(Transform.rotation(radians));
		Projection map = Projection.of(before).then(tilt)
				.then(Projection.of(Transform.translation(width / 2.0 + 0.37, height / 2.0 - 0.21)));
		Photograph photograph = new Photograph(plan, map, width, height);
		Random random = new Random(8);
		// art, of which some is as large as a mark
		for (int i = 0; i < 12; i++) {
			double x = 17 + 33 * random.nextDouble();
			double y = 15 + 15 * random.nextDouble();
			photograph.art(new Bounds(x, y, x + 1 + 5 * random.nextDouble(), y + 1 + 5 * random.nextDouble()));
		}
		return photograph;
	}

	private static List<String> ids(FoundMarks found) {
		return found.findings().stream().map(RegisterFinding::id).toList();
	}

	/** @return root mean square of the marks' errors along each axis, in pixels */
	private static double rms(Photograph photograph, FoundMarks found) {
		double sum = 0;
		int count = 0;
		for (int i = 0; i < found.places().size(); i++) {
			if (found.places().get(i).isPresent()) {
				Point error = found.places().get(i).get().minus(photograph.place(i));
				sum += error.dot(error);
				count += 2;
			}
		}
		return Math.sqrt(sum / count);
	}

	private static void assertFound(Photograph photograph, FoundMarks found) {
		assertEquals(photograph.plan.marks().size(), found.count(), found.findings().toString());
		double rms = rms(photograph, found);
		assertTrue(rms < 0.1, "marks are off by " + rms + " px");
	}

	@ParameterizedTest
	@EnumSource(MarkKind.class)
	void everyKindIsFoundWithinATenthOfAPixel(MarkKind kind) throws RegisterException {
		Photograph photograph = photograph(plan(kind), 3, false, 4e-5, -3e-5).blur(1).noise(5).shadow(0.4);
		FoundMarks found = MarkFinder.find(photograph.plan, photograph.take(1), DPI, Monitor.NONE);
		assertFound(photograph, found);
		assertEquals(List.of(), ids(found));
	}

	@ParameterizedTest
	@ValueSource(doubles = { -37, 91, 180, 222 })
	void howeverItIsTurned(double degrees) throws RegisterException {
		Photograph photograph = photograph(plan(MarkKind.DISC), degrees, false, 2e-5, 3e-5).blur(0.8).noise(4);
		FoundMarks found = MarkFinder.find(photograph.plan, photograph.take(2), Monitor.NONE);
		assertFound(photograph, found);
		assertFalse(found.isBlocked());
		assertEquals(degrees == 180 || degrees == 222, ids(found).contains("sheet-upside-down"));
		assertEquals(degrees == 91, ids(found).contains("sheet-turned"));
	}

	@ParameterizedTest
	@EnumSource(value = MarkKind.class, names = { "DISC", "CROSS" })
	void aMirroredSheetIsFoundAndToldApart(MarkKind kind) throws RegisterException {
		Photograph photograph = photograph(plan(kind), 20, true, 0, 0).blur(1).noise(4);
		FoundMarks found = MarkFinder.find(photograph.plan, photograph.take(3), DPI, Monitor.NONE);
		assertFound(photograph, found);
		assertTrue(found.mirrored());
		assertTrue(found.isBlocked());
		assertEquals(List.of("sheet-mirrored"), ids(found));
	}

	/** What the cuts come to: no place of the sheet is off by 0.1 mm. */
	@ParameterizedTest
	@CsvSource({ "0.5, 2, 0", "1.2, 8, 0.5", "2, 4, 0.3" })
	void theSheetIsKnownWithinATenthOfAMillimetre(double blur, double noise, double shadow) throws RegisterException {
		Photograph photograph = photograph(plan(MarkKind.DISC), -8, false, -8e-5, 6e-5).blur(blur).noise(noise)
				.shadow(shadow).gain(0.05);
		FoundMarks found = MarkFinder.find(photograph.plan, photograph.take(4), DPI, Monitor.NONE);
		assertFound(photograph, found);
		Registration fit = found.registration(FitKind.PROJECTIVE, Resolution.given(DPI));
		for (int x = 0; x <= WIDTH; x += 9) {
			for (int y = 0; y <= HEIGHT; y += 10) {
				Point at = new Point(x, y);
				double off = fit.map().apply(at).distance(photograph.toPixels.apply(at).times(1 / SCALE));
				assertTrue(off < 0.1, at + " is off by " + off + " mm");
			}
		}
	}

	@Test
	void aMarkThatIsMissingIsNamed() throws RegisterException {
		Photograph photograph = photograph(plan(MarkKind.DISC), 5, false, 0, 0).blur(1).noise(4).without(2);
		FoundMarks found = MarkFinder.find(photograph.plan, photograph.take(5), DPI, Monitor.NONE);
		assertEquals(3, found.count());
		assertEquals(Optional.empty(), found.places().get(2));
		assertTrue(rms(photograph, found) < 0.1);
		assertEquals(List.of("mark-missing", "tilt-unknown"), ids(found));
		assertTrue(found.findings().get(0).message().startsWith("Mark 3 "));
		assertThrows(RegisterException.class, () -> found.registration(FitKind.PROJECTIVE, Resolution.given(DPI)));
		assertEquals(3, found.registration(FitKind.AFFINE, Resolution.given(DPI)).designed().size());
	}

	@Test
	void twoMarksAreTooFew() throws RegisterException {
		Photograph photograph = photograph(plan(MarkKind.CROSS), 5, false, 0, 0).blur(1).noise(4).without(1).without(3);
		FoundMarks found = MarkFinder.find(photograph.plan, photograph.take(5), DPI, Monitor.NONE);
		assertEquals(2, found.count());
		assertEquals(List.of("marks-few", "mark-missing", "mark-missing"), ids(found));
		assertTrue(rms(photograph, found) < 0.1);
	}

	@Test
	void aMarkOutsideOfThePictureIsNamed() throws RegisterException {
		Photograph whole = photograph(plan(MarkKind.DISC), 30, false, 0, 0);
		// the second mark is furthest to the right
		Photograph cut = new Photograph(whole.plan, whole.toPixels, (int) whole.place(1).x() - 10, whole.height).noise(4);
		FoundMarks found = MarkFinder.find(cut.plan, cut.take(6), DPI, Monitor.NONE);
		assertEquals(List.of("mark-outside", "tilt-unknown"), ids(found));
		assertTrue(found.findings().get(0).message().startsWith("Mark 2 "));
		assertTrue(rms(cut, found) < 0.1);
	}

	@Test
	void aDirtyMarkIsFoundAllTheSame() throws RegisterException {
		MarkPlan plan = plan(MarkKind.DISC);
		Point dirty = plan.marks().get(1).place();
		Photograph photograph = photograph(plan, 0, false, 0, 0).noise(4).blur(0.8)
				.art(new Bounds(dirty.x() + 1.8, dirty.y() - 0.3, dirty.x() + 6, dirty.y() + 0.3));
		FoundMarks found = MarkFinder.find(plan, photograph.take(7), DPI, Monitor.NONE);
		assertFound(photograph, found);
	}

	@Test
	void withoutMarksThereIsNothingToGoBy() throws RegisterException {
		MarkPlan plan = plan(MarkKind.DISC);
		Photograph photograph = photograph(plan, 0, false, 0, 0).noise(4).without(0).without(1).without(2).without(3);
		FoundMarks art = MarkFinder.find(plan, photograph.take(8), DPI, Monitor.NONE);
		assertTrue(art.isBlocked(), art.toString());
		FoundMarks bare = MarkFinder.find(plan, new Grey(600, 400, new byte[240_000]), Monitor.NONE);
		assertEquals(List.of("marks-none"), ids(bare));
		assertEquals(0, bare.count());
		assertThrows(CancellationException.class,
				() -> MarkFinder.find(plan, new Grey(60, 40, new byte[2400]), () -> true));
	}

	@Test
	void theSamePictureGivesTheSamePlaces() throws RegisterException {
		Photograph photograph = photograph(plan(MarkKind.CROSS), 12, false, 0, 0).noise(6).blur(1);
		Grey picture = photograph.take(9);
		assertEquals(MarkFinder.find(photograph.plan, picture, DPI, Monitor.NONE),
				MarkFinder.find(photograph.plan, picture, DPI, Monitor.NONE));
	}
}
