package org.frisket.sheets;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedJob;
import org.frisket.testkit.SampleJobs;

/** Jobs of plain shapes. */
public final class Shapes {

	private Shapes() {
	}

	public static Job job() {
		Job job = Jobs.create("job", "Tags of Harbour Lane");
		Jobs.addLayer(job, "Card");
		return job;
	}

	public static Layer card(Job job) {
		return job.getLayers().get(0);
	}

	public static Element add(Layer layer, OperationKind kind, String path) {
		Element element = Jobs.addOutline(layer, path);
		Jobs.addOperation(element, kind);
		return element;
	}

	public static Element cut(Job job, double x, double y, double width, double height) {
		return add(card(job), OperationKind.CUT, box(x, y, width, height));
	}

	public static String box(double x, double y, double width, double height) {
		return "M" + x + " " + y + "h" + width + "v" + height + "h" + -width + "z";
	}

	public static String disc(double x, double y, double r) {
		return "M" + (x - r) + " " + y + "a" + r + " " + r + " 0 1 0 " + 2 * r + " 0a" + r + " " + r + " 0 1 0 " + -2 * r
				+ " 0z";
	}

	public static List<SheetPart> parts(Job job, boolean apart) {
		return JobParts.of(SampleJobs.prepared(job), apart, Tolerance.DEFAULT, Monitor.NONE);
	}

	public static List<LaidSheet> laid(Job job) {
		return LaidSheets.of(job, alone(job), Tolerance.DEFAULT, Monitor.NONE);
	}

	public static Map<String, PreparedJob> alone(Job job) {
		return Map.of(job.getId(), SampleJobs.prepared(job));
	}
}
