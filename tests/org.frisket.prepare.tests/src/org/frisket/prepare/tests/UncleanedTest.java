package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Repair;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

/** What an element was before it was cleaned. */
class UncleanedTest {

	/** Two squares of 10 mm that overlap by 5 in each direction. */
	private static final String TWO_SQUARES = "M0 0H10V10H0Z M5 5H15V15H5Z";

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());

	private PreparedElement prepared(Job job, int element) {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(Jobs.elements(job).get(element).getId())
				.orElseThrow();
	}

	@Test
	void outlineIsKeptAsItWasDrawn() {
		PreparedElement prepared = prepared(SampleJobs.outline(TWO_SQUARES, OperationKind.CUT), 0);
		assertEquals(1, prepared.region().pieces().size());
		assertEquals(2, prepared.source().contours().size());
		assertEquals(new Bounds(0, 0, 15, 15), prepared.source().bounds());
		assertEquals(2, prepared.uncleaned().count(Repair.Kind.CROSSING_RESOLVED));
	}

	@Test
	void sourceLiesWhereTheElementLies() {
		Job job = SampleJobs.outline(TWO_SQUARES, OperationKind.CUT);
		Jobs.elements(job).get(0).setTransform(new Matrix(2, 0, 0, 2, 100, 50));
		PreparedElement prepared = prepared(job, 0);
		assertEquals(new Bounds(100, 50, 130, 80), prepared.source().bounds());
		assertEquals(prepared.bounds(), prepared.source().bounds());
	}

	@Test
	void lettersOfAJoinedWordAreThereOneByOne() {
		Job job = Jobs.create("job", "Ferry");
		Wording wording = Jobs.addWording(Jobs.addLayer(job, "Wording"), "nn", 20);
		wording.setFont(Jobs.font("Liberation Sans", null, null, null));
		wording.setJoined(true);
		wording.setTouch(1);
		PreparedElement prepared = prepared(job, 0);
		assertEquals(1, prepared.region().contours().size());
		assertEquals(2, prepared.source().contours().size());
		assertTrue(prepared.uncleaned().count(Repair.Kind.CROSSING_RESOLVED) > 0);
	}

	@Test
	void matIsItsOwnSource() {
		Job job = SampleJobs.outline(TWO_SQUARES, OperationKind.CUT);
		Element mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), 3, Jobs.elements(job));
		mat.setTransform(Matrix.translation(4, 0));
		PreparedElement prepared = prepared(job, 1);
		assertEquals(prepared.region().toOutline(), prepared.source());
		assertTrue(prepared.uncleaned().repairs().isEmpty());
	}

	@Test
	void curvesThatCleaningLeftAloneAreNotKeptTwice() {
		PreparedElement prepared = prepared(SampleJobs.outline("M0 0 V10 H10 V0 Z", OperationKind.CUT), 0);
		Outline clean = prepared.region().toOutline();
		Outline source = prepared.uncleaned().curves();
		assertEquals(4, source.nodeCount());
		source.contours().get(0).segments().forEach(segment -> assertSame(segment,
				clean.contours().get(0).segments().stream().filter(segment::equals).findFirst().orElseThrow()));
	}

	@Test
	void emptyAndUnreadableElementsHaveNoSource() {
		assertTrue(prepared(SampleJobs.outline("", OperationKind.CUT), 0).source().isEmpty());
		assertTrue(prepared(SampleJobs.outline("M0 0 Q", OperationKind.CUT), 0).source().isEmpty());
	}
}
