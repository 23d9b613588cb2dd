package org.frisket.testkit;

import java.util.List;
import java.util.OptionalDouble;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.prepare.Composition;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.UnknownFontException;

/** Jobs of Harbour Lane Paperworks, made with fonts that the product brings. */
public final class SampleJobs {

	private SampleJobs() {
	}

	public static FontFace face(String name) {
		try {
			return FontLibraries.installed().find(name);
		} catch (UnknownFontException | UnreadableFontException e) {
			throw new AssertionError(e);
		}
	}

	/** "Gift tag" in 20 mm capitals, letters apart, mats of 3 and 6 mm. */
	public static Job giftTag() {
		return new Composition("Gift tag", face("Liberation Serif Bold"), 20, Alignment.LEFT, OptionalDouble.empty(),
				List.of(3.0, 6.0), OperationKind.CUT).toJob();
	}

	/** One layer with one outline and operation. */
	public static Job outline(String pathData, OperationKind operation) {
		Job job = Jobs.create("job", "A shape");
		Layer layer = Jobs.addLayer(job, "Card");
		layer.setColour("#1d6f78");
		Outline outline = Jobs.addOutline(layer, pathData);
		outline.setName("Shape");
		Jobs.addOperation(outline, operation);
		return job;
	}

	public static PreparedJob prepared(Job job) {
		return new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}
}
