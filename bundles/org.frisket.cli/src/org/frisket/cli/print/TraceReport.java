package org.frisket.cli.print;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.frisket.cli.line.Json;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Region;
import org.frisket.print.contour.TracedContour;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.PictureRemark;
import org.frisket.print.picture.Resolution;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What tracing found, for people and for machines. */
record TraceReport(PictureFile picture, Resolution resolution, TracedContour traced, List<Path> outputs) {

	/** Why there is no contour. */
	String reason() {
		return traced.remarks().stream().filter(PictureRemark::isBlocking).map(PictureRemark::text)
				.collect(Collectors.joining("; "));
	}

	private List<PictureRemark> remarks() {
		List<PictureRemark> all = new ArrayList<>(picture.remarks(resolution));
		all.addAll(traced.remarks());
		return all;
	}

	void print(PrintWriter out) {
		for (PictureRemark remark : remarks()) {
			out.println(word(remark) + " " + remark.id() + ": " + remark.text());
		}
		Region region = traced.region();
		out.printf(Locale.ROOT, "picture %d × %d pixels, %.1f dots to the inch (%s), background %s%n", picture.width(),
				picture.height(), resolution.x(), source(), traced.backdrop());
		out.printf(Locale.ROOT, "contour %.2f × %.2f mm, %d pieces, %d holes, %d nodes, %.2f mm²%n",
				region.bounds().width(), region.bounds().height(), region.pieces().size(), holes(), region.nodeCount(),
				region.area());
		outputs.forEach(file -> out.println("wrote " + file));
	}

	private static String word(PictureRemark remark) {
		return remark.severity().name().toLowerCase(Locale.ROOT);
	}

	private String source() {
		return resolution.source().name().toLowerCase(Locale.ROOT);
	}

	private int holes() {
		return traced.region().pieces().stream().mapToInt(piece -> piece.holes().size()).sum();
	}

	String json() {
		JsonObject root = new JsonObject();
		JsonObject file = new JsonObject();
		file.addProperty("file", picture.name());
		file.addProperty("format", picture.format().name());
		file.addProperty("width", picture.width());
		file.addProperty("height", picture.height());
		file.addProperty("page", picture.page());
		file.addProperty("pages", picture.pages());
		file.addProperty("animated", picture.isAnimated());
		file.addProperty("profile", picture.profile().isPresent());
		root.add("picture", file);
		JsonObject dpi = new JsonObject();
		dpi.addProperty("x", resolution.x());
		dpi.addProperty("y", resolution.y());
		dpi.addProperty("source", source());
		root.add("dpi", dpi);
		root.addProperty("background", traced.backdrop().toString());
		Region region = traced.region();
		Bounds bounds = region.bounds();
		root.addProperty("pieces", region.pieces().size());
		root.addProperty("holes", holes());
		root.addProperty("nodes", region.nodeCount());
		root.addProperty("area", region.area());
		JsonObject box = new JsonObject();
		box.addProperty("x", bounds.minX());
		box.addProperty("y", bounds.minY());
		box.addProperty("width", bounds.width());
		box.addProperty("height", bounds.height());
		root.add("box", box);
		JsonArray remarks = new JsonArray();
		for (PictureRemark remark : remarks()) {
			JsonObject object = new JsonObject();
			object.addProperty("severity", word(remark));
			object.addProperty("id", remark.id());
			object.addProperty("text", remark.text());
			remarks.add(object);
		}
		root.add("remarks", remarks);
		JsonArray written = new JsonArray();
		outputs.forEach(each -> written.add(each.toString()));
		root.add("output", written);
		return Json.text(root);
	}
}
