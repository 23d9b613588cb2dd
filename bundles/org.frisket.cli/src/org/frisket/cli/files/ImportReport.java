package org.frisket.cli.files;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.frisket.cli.line.Json;
import org.frisket.cli.work.FindingsJson;
import org.frisket.cli.work.Report;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.imports.job.TakenArt;
import org.frisket.prepare.Finding;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/**
 * What became of artwork, for people and for machines.
 *
 * @param findings of makeready on the job
 */
record ImportReport(Path input, Path output, TakenArt taken, List<Finding> findings) {

	/** Whether the job cannot be cut as it is, or a line stays open that was meant to go round something. */
	boolean isBlocked() {
		return findings.stream().anyMatch(Finding::isBlocking)
				|| taken.layers().stream().anyMatch(layer -> !layer.open().isEmpty());
	}

	void print(PrintWriter out) {
		for (TakenArt.Layer layer : taken.layers()) {
			layer.mends().forEach(mend -> out.println(MendText.line(layer.name(), mend)));
			for (Contour line : layer.open()) {
				Point end = line.end();
				out.printf(Locale.ROOT, "blocking contour-open %s at %.2f,%.2f mm: open by %s; it bounds no area%n",
						layer.name(), end.x(), end.y(), Length.text(end.distance(line.start()), 3));
			}
			out.printf(Locale.ROOT, "layer %s: %d areas, %d lines, %d pictures, %d repairs%n", layer.name(),
					layer.areas(), layer.lines(), layer.pictures(), layer.mends().size());
		}
		taken.remarks().forEach(remark -> out.println("remark " + remark));
		new Report(out).findings(findings);
		out.println("wrote " + output);
	}

	String json() {
		JsonObject root = new JsonObject();
		root.addProperty("input", input.toString());
		root.addProperty("output", output.toString());
		JsonArray layers = new JsonArray();
		JsonArray repairs = new JsonArray();
		for (TakenArt.Layer layer : taken.layers()) {
			layers.add(json(layer));
			layer.mends().forEach(mend -> repairs.add(MendText.json(layer.name(), mend)));
		}
		root.add("layers", layers);
		root.add("repairs", repairs);
		JsonArray remarks = new JsonArray();
		taken.remarks().forEach(remark -> remarks.add(remark.toString()));
		root.add("remarks", remarks);
		root.add("findings", FindingsJson.of(findings));
		return Json.text(root);
	}

	private static JsonObject json(TakenArt.Layer layer) {
		JsonObject object = new JsonObject();
		object.addProperty("name", layer.name());
		object.addProperty("areas", layer.areas());
		object.addProperty("lines", layer.lines());
		object.addProperty("pictures", layer.pictures());
		JsonArray open = new JsonArray();
		for (Contour line : layer.open()) {
			JsonObject gap = new JsonObject();
			gap.addProperty("x", line.end().x());
			gap.addProperty("y", line.end().y());
			gap.addProperty("gap", line.end().distance(line.start()));
			open.add(gap);
		}
		object.add("open", open);
		return object;
	}
}
