package org.frisket.cli.jobs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.cli.line.Conversions;
import org.frisket.cli.line.Refusal;
import org.frisket.model.Element;
import org.frisket.model.FrameKind;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;

import picocli.CommandLine.Option;

/** What shape mats make of the wording. */
final class MatOptions {

	private static final Map<String, MatForm> FORMS = new LinkedHashMap<>();

	static {
		FORMS.put("follow", MatForm.FOLLOW);
		FORMS.put("hull", MatForm.CONVEX_HULL);
		FORMS.put("hollow-hull", MatForm.HOLLOW_HULL);
		FORMS.put("frame", MatForm.FRAME);
		FORMS.put("shadow", MatForm.SHADOW);
	}

	@Option(names = "--mat-form", paramLabel = "FORM", defaultValue = "follow", description = "Of the mats: follow, hull, hollow-hull, frame or shadow (default ${DEFAULT-VALUE}).")
	private String form;

	@Option(names = "--hull-reach", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Of a hollow hull: the widest mouth it bridges (default 10mm).")
	private Double reach;

	@Option(names = "--shadow", paramLabel = "RIGHT,DOWN", split = ",", converter = Conversions.AnyLength.class, description = "Of a shadow: how far it falls (default 3mm,3mm).")
	private List<Double> shadow;

	@Option(names = "--frame", paramLabel = "KIND", description = "Of a frame: rectangle or ellipse (default rectangle).")
	private String frame;

	@Option(names = "--frame-margin", paramLabel = "LENGTH", converter = Conversions.AnyLength.class, description = "Of a frame: from the wording to its inner edge, to which the distance is added (default 5mm).")
	private Double margin;

	@Option(names = "--frame-width", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Of a frame (default 5mm).")
	private Double width;

	@Option(names = "--mat-radius", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "Rounds the corners of the mats.")
	private Double radius;

	@Option(names = "--smallest-hole", paramLabel = "LENGTH", converter = Conversions.PositiveLength.class, description = "With --holes fillSmall: diameter of a disc that has room in holes that stay (default 3mm).")
	private Double smallestHole;

	/** @throws Refusal if there is no such form, or the shadow has not two lengths */
	void check() throws Refusal {
		if (!FORMS.containsKey(form)) {
			throw new Refusal("--mat-form: “" + form + "” is not one of " + String.join(", ", FORMS.keySet()));
		}
		if (shadow != null && shadow.size() != 2) {
			throw new Refusal("--shadow takes two lengths, such as 3mm,3mm");
		}
		if (frame != null && FrameKind.getByName(frame) == null) {
			throw new Refusal("--frame: “" + frame + "” is not one of rectangle, ellipse");
		}
	}

	/** Decides it for all mats of a job. */
	void decide(Job job) {
		for (Element element : Jobs.elements(job)) {
			if (element instanceof Mat mat) {
				decide(mat);
			}
		}
	}

	private void decide(Mat mat) {
		mat.setForm(FORMS.get(form));
		if (reach != null) {
			mat.setReach(reach);
		}
		if (shadow != null) {
			mat.setShadowX(shadow.get(0));
			mat.setShadowY(shadow.get(1));
		}
		if (frame != null) {
			mat.setFrameKind(FrameKind.getByName(frame));
		}
		if (margin != null) {
			mat.setFrameMargin(margin);
		}
		if (width != null) {
			mat.setFrameWidth(width);
		}
		if (radius != null) {
			mat.setCornerRadius(radius);
		}
		if (smallestHole != null) {
			mat.setSmallestHole(smallestHole);
		}
	}
}
