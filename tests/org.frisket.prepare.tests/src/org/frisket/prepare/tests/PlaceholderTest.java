package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.FontRef;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;

/** Wordings whose font is not there. */
class PlaceholderTest {

	private final Job job = Jobs.create("HL-7", "Ferry banner");
	private final Layer layer = Jobs.addLayer(job, "Wording");
	private final Wording wording = Jobs.addWording(layer, "Ferry\nHarbour", 20);

	PlaceholderTest() {
		wording.setFont(Jobs.font("Harbour Lane Grotesk", "Regular", "00", "/nowhere/harbour.ttf"));
		wording.setLineSpacing(1.5);
	}

	private PreparedJob prepare() {
		return new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private Outline placeholder() {
		return Placeholder.of(prepare().elements().findFirst().orElseThrow());
	}

	@Test
	void eachLineGetsACrossedBoxAboutAsLargeAsItWouldBe() {
		Outline outline = placeholder();
		assertEquals(6, outline.contours().size());
		Bounds bounds = outline.bounds();
		assertEquals(-20, bounds.minY(), 1e-9);
		assertEquals(30, bounds.maxY(), 1e-9);
		assertEquals(0, bounds.minX(), 1e-9);
		Wording real = Jobs.addWording(layer, wording.getText(), 20);
		real.setFont(Jobs.font("Liberation Serif", "Regular", null, null));
		double width = prepare().element(real.getId()).orElseThrow().bounds().width();
		assertEquals(1, bounds.width() / width, 0.35);
	}

	@Test
	void itLiesWhereTheWordingLies() {
		Bounds before = placeholder().bounds();
		wording.setTransform(Matrix.translation(30, 40));
		assertEquals(before.minX() + 30, placeholder().bounds().minX(), 1e-9);
		assertEquals(before.maxY() + 40, placeholder().bounds().maxY(), 1e-9);
	}

	@Test
	void shorterLinesStandAsTheWordingIsAligned() {
		wording.setText("Ferry\nF");
		wording.setAlignment(Alignment.RIGHT);
		Outline outline = placeholder();
		assertEquals(outline.bounds().maxX(), outline.contours().get(3).bounds().maxX(), 1e-9);
		wording.setAlignment(Alignment.CENTRE);
		assertEquals(placeholder().bounds().centre().x(), placeholder().contours().get(3).bounds().centre().x(), 1e-9);
	}

	@Test
	void nothingOfItIsEverCutAndNoMatGrowsAroundIt() {
		Jobs.addMat(layer, 3, List.of(wording));
		PreparedJob prepared = prepare();
		for (PreparedElement element : prepared.elements().toList()) {
			assertTrue(element.region().isEmpty(), element.element().getId());
			assertEquals(List.of(), element.lines());
		}
	}

	@Test
	void theFontAskedForStaysInTheJob() throws Exception {
		byte[] before = JobFile.toBytes(job);
		placeholder();
		FontRef kept = wording.getFont();
		assertNotNull(kept);
		assertEquals("Harbour Lane Grotesk", kept.getName());
		assertEquals(new String(before), new String(JobFile.toBytes(job)));
	}

	@Test
	void wordingWithItsFontOrWithoutWordsHasNone() {
		wording.setText("");
		assertEquals(Outline.EMPTY, placeholder());
		wording.setText("Ferry");
		wording.setFont(Jobs.font("Liberation Serif", "Regular", null, null));
		assertEquals(Outline.EMPTY, placeholder());
	}

	@Test
	void wordingWithoutAnyFontHasOneToo() {
		wording.setFont(null);
		assertEquals(6, placeholder().contours().size());
	}
}
