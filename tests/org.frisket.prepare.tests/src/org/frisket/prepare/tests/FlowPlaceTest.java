package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Flow;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.wording.FlowPlace;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wording that is set otherwise is seen about where it was. */
class FlowPlaceTest {

	private final Job job = Jobs.create("job", "Harbour Lane");
	private final Wording wording = Jobs.addWording(Jobs.addLayer(job, "Wording"), "Ferry Quay", 10);
	private final JobPreparer preparer = new JobPreparer(FontLibrary.standard());

	private Bounds seen() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).layers().get(0).elements().get(0).bounds();
	}

	@ParameterizedTest
	@CsvSource({ "ARC,CENTRE,false,false,0", "ARC,LEFT,false,false,0", "ARC,RIGHT,true,false,40", "ARC,CENTRE,true,true,180",
			"ARC,CENTRE,false,true,-30", "STACKED,LEFT,false,false,0", "STRAIGHT,LEFT,false,false,0" })
	void middleStaysNearWhereItWas(Flow flow, Alignment alignment, boolean inside, boolean inward, double angle) {
		wording.setFont(Jobs.font("Liberation Sans", null, null, null));
		wording.setArcRadius(80);
		wording.setArcInside(inside);
		wording.setArcInward(inward);
		wording.setArcAngle(angle);
		// shifted, turned by a quarter and twice as large
		wording.setTransform(new Matrix(0, 2, -2, 0, 120, 70));
		if (flow == Flow.STRAIGHT) {
			wording.setFlow(Flow.ARC);
		}
		Bounds before = seen();
		wording.setTransform(FlowPlace.of(wording, flow, alignment, before));
		wording.setAlignment(alignment);
		wording.setFlow(flow);
		Bounds after = seen();
		double off = after.centre().minus(before.centre()).length();
		// by a third of its length at most, where the way it is set has changed it most
		assertTrue(off < Math.max(before.width(), before.height()) / 3, off + " mm off: " + before + " " + after);
	}

	@Test
	void whatIsNotSeenStaysWhereItIs() {
		wording.setTransform(Matrix.translation(3, 4));
		assertEquals(Matrix.translation(3, 4), FlowPlace.of(wording, Flow.ARC, Alignment.LEFT, Bounds.EMPTY));
	}
}
