package org.frisket.orders.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.page.flow.Figures;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;

/** Two states of one job beside each other. */
class ComparedJobsTest {

	/** Pixels of a screen to a mm: 96 to an inch, as CSS has it. */
	private static final double PIXELS = 96 / 25.4;

	/** A plate that stays, and a tag that is moved and may be missing. */
	private static PreparedJob job(double down, boolean tag) {
		Job job = Jobs.create("pair", "Harbour Lane gift tags");
		Layer layer = Jobs.addLayer(job, "Harbour blue");
		layer.setColour(SamplePapers.BLUE);
		part(layer, "plate", "M0 0H60V20H0Z", 0);
		if (tag) {
			part(layer, "tag", "M0 30H20V40H0Z", down);
		}
		return new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static void part(Layer layer, String id, String path, double down) {
		Outline outline = Jobs.addOutline(layer, path);
		outline.setId(id);
		outline.setTransform(Matrix.translation(0, down));
		Jobs.addOperation(outline, OperationKind.CUT);
	}

	private static ComparedJobs compared(PreparedJob mine, PreparedJob theirs, int width, int height) throws Exception {
		return ComparedJobs.of(mine, theirs, List.of("tag", "plate", "nothing"), width, height, 1, new Figures(false))
				.orElseThrow();
	}

	@Test
	void whatHasNotMovedIsAtTheSamePlaceInBoth() throws Exception {
		ComparedJobs both = compared(job(0, true), job(10, true), 1000, 1000);
		assertEquals(both.mine().image().getWidth(), both.theirs().image().getWidth());
		assertEquals(both.mine().image().getHeight(), both.theirs().image().getHeight());
		assertEquals(both.mine().places().get(1), both.theirs().places().get(1));
		assertEquals("plate", both.mine().places().get(1).element());
		assertEquals(List.of("tag", "plate"), both.mine().places().stream().map(ComparedJobs.Place::element).toList());
		assertEquals(10 * PIXELS, both.theirs().places().get(0).y() - both.mine().places().get(0).y(), 0.01);
		assertEquals(20 * PIXELS, both.mine().places().get(0).width(), 0.01);
		// no larger than it is: 60 by 50 mm hold both states
		assertEquals(60 * PIXELS, both.mine().image().getWidth(), 1);
		assertEquals(50 * PIXELS, both.mine().image().getHeight(), 1);
	}

	@Test
	void layersHaveTheirColourAndPartsLieWhereTheirPlacesSay() throws Exception {
		ComparedJobs both = compared(job(0, true), job(10, true), 1000, 1000);
		for (ComparedJobs.Side side : List.of(both.mine(), both.theirs())) {
			for (ComparedJobs.Place place : side.places()) {
				int x = (int) (place.x() + place.width() / 2);
				int y = (int) (place.y() + place.height() / 2);
				assertEquals(0x2a4d8f, side.image().getRGB(x, y) & 0xffffff, place.element());
			}
		}
		ComparedJobs.Place theirs = both.theirs().places().get(0);
		assertEquals(0xffffff, both.mine().image().getRGB((int) (theirs.x() + 10), (int) (theirs.y() + theirs.height() - 4))
				& 0xffffff, "it has not come there on this side");
	}

	@Test
	void whatIsMissingOnOneSideIsShownWhereItLiesOnTheOther() throws Exception {
		ComparedJobs both = compared(job(0, true), job(0, false), 120, 90);
		assertTrue(both.mine().places().get(0).there());
		assertFalse(both.theirs().places().get(0).there());
		assertEquals(both.mine().places().get(0).y(), both.theirs().places().get(0).y(), 1e-9);
		assertTrue(both.mine().image().getWidth() <= 120 && both.mine().image().getHeight() <= 90);
		assertTrue(both.text().contains("1 : "), both.text());
	}

	@Test
	void jobsWithNothingInThemHaveNoPicture() throws Exception {
		PreparedJob empty = new JobPreparer(FontLibraries.installed()).prepare(Jobs.create("none", ""), Tolerance.DEFAULT,
				Monitor.NONE);
		assertEquals(Optional.empty(), ComparedJobs.of(empty, empty, List.of(), 100, 100, 1, new Figures(false)));
		assertTrue(ComparedJobs.of(empty, job(0, true), List.of("tag"), 100, 100, 2, new Figures(true)).isPresent());
	}
}
