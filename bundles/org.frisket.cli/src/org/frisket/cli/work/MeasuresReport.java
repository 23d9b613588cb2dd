package org.frisket.cli.work;

import java.util.Locale;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.measure.Measures;
import org.frisket.geometry.measure.RegionMeasures;
import org.frisket.geometry.measure.StrokeWidths;
import org.frisket.prepare.PreparedElement;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;

/** What was measured of an element: one line for people, an object for machines. Lengths in mm, places in the job's frame. */
public final class MeasuresReport {

	private MeasuresReport() {
	}

	public static String line(PreparedElement element, RegionMeasures m) {
		Bounds bounds = m.bounds();
		String box = bounds.isEmpty() ? "nowhere"
				: String.format(Locale.ROOT, "%.2f × %.2f mm at %.2f,%.2f", bounds.width(), bounds.height(), bounds.minX(),
						bounds.minY());
		return String.format(Locale.ROOT,
				"measures %s%s: area %.2f mm², length %.2f mm, box %s, smallest box %s, least width %.2f mm, "
						+ "thinnest %s, thickest %.2f mm, gap %s, pieces %d, holes %d, nodes %d, lines %d, sharpest %s, centre %s",
				element.element().getId(), name(element), m.area(), m.length(), box,
				m.smallestBox().map(b -> String.format(Locale.ROOT, "%.2f × %.2f mm", b.wide(), b.narrow())).orElse("none"),
				m.leastWidth(), width(m.thinnest()), m.thickest(), width(m.narrowestGap()), m.pieces(), m.holes(), m.nodes(),
				m.lines(), m.sharpest().map(c -> at(c.angle(), "°", c.place())).orElse("none"),
				m.centre().map(c -> String.format(Locale.ROOT, "%.2f,%.2f", c.x(), c.y())).orElse("none"));
	}

	private static String name(PreparedElement element) {
		String name = element.element().getName();
		return name == null ? "" : " (" + name + ")";
	}

	private static String width(Optional<StrokeWidths.Width> width) {
		return width.map(w -> at(w.mm(), " mm", w.place())).orElse("none");
	}

	private static String at(double value, String unit, Point place) {
		return String.format(Locale.ROOT, "%.2f%s at %.2f,%.2f", value, unit, place.x(), place.y());
	}

	/** What there is not is null. */
	static JsonObject json(PreparedElement element, RegionMeasures m) {
		JsonObject object = new JsonObject();
		object.addProperty("element", element.element().getId());
		object.addProperty("name", element.element().getName());
		object.addProperty("area", m.area());
		object.addProperty("length", m.length());
		object.add("bounds", m.bounds().isEmpty() ? JsonNull.INSTANCE : bounds(m.bounds()));
		object.add("smallestBox", m.smallestBox().<JsonElement>map(MeasuresReport::box).orElse(JsonNull.INSTANCE));
		object.addProperty("leastWidth", m.leastWidth());
		object.add("thinnest", m.thinnest().map(w -> placed(w.mm(), w.place())).orElse(JsonNull.INSTANCE));
		object.addProperty("thickest", m.thickest());
		object.add("narrowestGap", m.narrowestGap().map(w -> placed(w.mm(), w.place())).orElse(JsonNull.INSTANCE));
		object.addProperty("pieces", m.pieces());
		object.addProperty("holes", m.holes());
		object.addProperty("nodes", m.nodes());
		object.addProperty("lines", m.lines());
		object.add("sharpest",
				m.sharpest().map(c -> placed(c.angle(), c.place())).orElse(JsonNull.INSTANCE));
		object.add("centre", m.centre().map(MeasuresReport::point).orElse(JsonNull.INSTANCE));
		return object;
	}

	private static JsonObject bounds(Bounds bounds) {
		JsonObject object = new JsonObject();
		object.addProperty("minX", bounds.minX());
		object.addProperty("minY", bounds.minY());
		object.addProperty("maxX", bounds.maxX());
		object.addProperty("maxY", bounds.maxY());
		return object;
	}

	private static JsonObject box(Measures.Box box) {
		JsonObject object = new JsonObject();
		object.addProperty("wide", box.wide());
		object.addProperty("narrow", box.narrow());
		return object;
	}

	private static JsonElement placed(double value, Point place) {
		JsonObject object = new JsonObject();
		object.addProperty("value", value);
		object.addProperty("x", place.x());
		object.addProperty("y", place.y());
		return object;
	}

	private static JsonElement point(Point point) {
		JsonObject object = new JsonObject();
		object.addProperty("x", point.x());
		object.addProperty("y", point.y());
		return object;
	}
}
