package org.frisket.cli.files;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.frisket.cli.line.Json;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.geometry.measure.Straying;
import org.frisket.geometry.repair.Mend;
import org.frisket.imports.Remark;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/**
 * What cleaning did, for people and for machines.
 *
 * @param remarks of the importer
 * @param pen     whether lines that stay open are meant to
 */
record CleanReport(Path input, List<Path> outputs, List<CleanedLayer> layers, List<Remark> remarks, boolean pen) {

	/** Of its length; a line whose ends lie no further apart is nearly a loop. */
	private static final double LOOP = 0.1;

	/** Whether a line stays open that was meant to go round something, and so cannot be cut. */
	boolean isBlocked() {
		return !pen && layers.stream().flatMap(layer -> layer.artwork().openLines().stream())
				.anyMatch(CleanReport::isUnclosed);
	}

	/** Ends close together for so long a line were meant to meet; others are a line's ends. Common practice, no source. */
	private static boolean isUnclosed(Contour line) {
		return line.end().distance(line.start()) <= LOOP * line.length();
	}

	void print(PrintWriter out) {
		for (CleanedLayer layer : layers) {
			String name = layer.source().name();
			for (Mend mend : layer.mends()) {
				out.println(MendText.line(name, mend));
			}
			if (!pen) {
				for (Contour line : layer.artwork().openLines()) {
					Point end = line.end();
					out.printf(Locale.ROOT, "%s %s at %.2f,%.2f mm: open by %s; it is drawn, not cut%n",
							isUnclosed(line) ? "blocking contour-open" : "note line-open", name, end.x(), end.y(),
							Length.text(end.distance(line.start()), 3));
				}
			}
			if (!layer.isWithinTolerance()) {
				out.printf(Locale.ROOT, "note moved-further %s by %.4f mm%n", name, layer.movement().mm());
			}
			out.printf(Locale.ROOT, "layer %s: %d areas, %d lines, %d nodes, %d repairs%n", name, areas(layer),
					layer.artwork().lines().size(), layer.artwork().toOutline().nodeCount(), layer.mends().size());
		}
		allRemarks().forEach(remark -> out.println("remark " + remark));
		outputs.forEach(file -> out.println("wrote " + file));
	}

	/** Counted by their outer contours, which run counter-clockwise to the viewer. */
	private static long areas(CleanedLayer layer) {
		return layer.artwork().areas().stream().flatMap(area -> area.outline().contours().stream())
				.filter(contour -> contour.signedArea() < 0).count();
	}

	private List<String> allRemarks() {
		return remarks.stream().map(Remark::toString).toList();
	}

	String json() {
		JsonObject root = new JsonObject();
		root.addProperty("input", input.toString());
		JsonArray written = new JsonArray();
		outputs.forEach(file -> written.add(file.toString()));
		root.add("output", written);
		JsonArray layersJson = new JsonArray();
		JsonArray repairs = new JsonArray();
		for (CleanedLayer layer : layers) {
			layersJson.add(json(layer));
			layer.mends().forEach(mend -> repairs.add(MendText.json(layer.source().name(), mend)));
		}
		root.add("layers", layersJson);
		root.add("repairs", repairs);
		JsonArray remarksJson = new JsonArray();
		allRemarks().forEach(remarksJson::add);
		root.add("remarks", remarksJson);
		return Json.text(root);
	}

	private static JsonObject json(CleanedLayer layer) {
		JsonObject object = new JsonObject();
		object.addProperty("name", layer.source().name());
		object.addProperty("areas", areas(layer));
		object.addProperty("lines", layer.artwork().lines().size());
		object.addProperty("nodes", layer.artwork().toOutline().nodeCount());
		JsonArray open = new JsonArray();
		for (Contour line : layer.artwork().openLines()) {
			JsonObject gap = new JsonObject();
			gap.addProperty("x", line.end().x());
			gap.addProperty("y", line.end().y());
			gap.addProperty("gap", line.end().distance(line.start()));
			gap.addProperty("blocking", isUnclosed(line));
			open.add(gap);
		}
		object.add("open", open);
		object.add("movement", movement(layer));
		return object;
	}

	/** How far what is there now lies from what was there, and the other way round, but for what is listed beside it. */
	private static JsonObject movement(CleanedLayer layer) {
		JsonObject object = new JsonObject();
		object.add("result", json(layer.movement().result()));
		object.add("source", json(layer.movement().source()));
		object.addProperty("exactTo", layer.movement().result().exactTo());
		object.addProperty("withinTolerance", layer.isWithinTolerance());
		object.add("taken", listed(layer.mended().taken()));
		object.add("brought", listed(layer.mended().brought()));
		return object;
	}

	private static JsonObject json(Straying straying) {
		JsonObject object = new JsonObject();
		// JSON knows no infinity, which is said where nothing is left
		object.addProperty("mm", Double.isFinite(straying.mm()) ? straying.mm() : null);
		if (straying.place() != null) {
			object.addProperty("x", straying.place().x());
			object.addProperty("y", straying.place().y());
		}
		return object;
	}

	private static JsonArray listed(List<Contour> contours) {
		JsonArray array = new JsonArray();
		for (Contour contour : contours) {
			JsonObject object = new JsonObject();
			object.addProperty("x", contour.start().x());
			object.addProperty("y", contour.start().y());
			object.addProperty("length", contour.length());
			array.add(object);
		}
		return array;
	}
}
