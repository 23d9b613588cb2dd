package org.frisket.cli.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.cli.line.Json;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.print.register.Lie;
import org.frisket.print.register.MeasuredLengths;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;

/**
 * What is answered about a fit.
 *
 * @param fit     itself
 * @param lengths that the measured places were found from
 * @param places  of the design whose map is asked for
 * @param sigma   standard error of a measured coordinate in mm, given or from the residuals
 * @param printer kept of it
 * @param scanned what was noticed about the marks in a scan
 */
record RegisterReport(Registration fit, Optional<MeasuredLengths> lengths, List<Point> places, OptionalDouble sigma,
		Optional<PrinterProfile> printer, List<RegisterFinding> scanned) {

	private static final int DECIMALS = 4;

	/** Lengths in mm, angles in degrees. */
	JsonObject json() {
		JsonObject answer = new JsonObject();
		answer.addProperty("fit", word(fit.kind()));
		JsonArray matrix = new JsonArray();
		for (double number : fit.map().rows()) {
			matrix.add(number);
		}
		answer.add("matrix", matrix);
		answer.addProperty("rms", fit.rms());
		JsonArray residuals = new JsonArray();
		fit.residuals().forEach(residual -> residuals.add(pair(residual)));
		answer.add("residuals", residuals);
		answer.addProperty("max", fit.max());
		answer.addProperty("redundancy", fit.redundancy());
		Lie lie = fit.lie();
		answer.addProperty("scale", lie.scale());
		answer.addProperty("scaleX", lie.scaleX());
		answer.addProperty("scaleY", lie.scaleY());
		answer.addProperty("rotation", Math.toDegrees(lie.rotation()));
		answer.addProperty("skew", Math.toDegrees(lie.skew()));
		answer.addProperty("mirrored", lie.mirrored());
		answer.addProperty("conditioning", fit.conditioning());
		answer.add("sigma", sigma.isPresent() ? Json.GSON.toJsonTree(sigma.getAsDouble()) : JsonNull.INSTANCE);
		lengths.ifPresent(found -> answer.add("lengths", lengths(found)));
		if (!places.isEmpty()) {
			JsonArray mapped = new JsonArray();
			places.forEach(place -> mapped.add(place(place)));
			answer.add("places", mapped);
		}
		printer.ifPresent(profile -> answer.add("printer", printer(profile)));
		JsonArray findings = new JsonArray();
		findings().forEach(finding -> findings.add(finding(finding)));
		answer.add("findings", findings);
		return answer;
	}

	private List<RegisterFinding> findings() {
		List<RegisterFinding> all = new ArrayList<>(fit.findings());
		lengths.ifPresent(found -> all.addAll(found.findings()));
		all.addAll(scanned);
		return all;
	}

	static JsonArray pair(Point point) {
		JsonArray pair = new JsonArray();
		pair.add(point.x());
		pair.add(point.y());
		return pair;
	}

	private static JsonObject lengths(MeasuredLengths found) {
		JsonObject object = new JsonObject();
		JsonArray measured = new JsonArray();
		found.places().forEach(place -> measured.add(pair(place)));
		object.add("measured", measured);
		JsonArray residuals = new JsonArray();
		found.residuals().forEach(residuals::add);
		object.add("residuals", residuals);
		object.addProperty("redundancy", found.redundancy());
		return object;
	}

	private JsonObject place(Point place) {
		JsonObject object = new JsonObject();
		object.add("design", pair(place));
		object.add("mapped", pair(fit.map().apply(place)));
		object.add("error", sigma.isPresent() ? pair(fit.errorAt(place, sigma.getAsDouble())) : JsonNull.INSTANCE);
		return object;
	}

	static JsonObject printer(PrinterProfile profile) {
		JsonObject object = new JsonObject();
		object.addProperty("name", profile.name());
		object.addProperty("scaleX", profile.scaleX());
		object.addProperty("scaleY", profile.scaleY());
		object.addProperty("skew", Math.toDegrees(profile.skew()));
		object.addProperty("measured", profile.measured().toString());
		object.addProperty("marks", profile.marks());
		return object;
	}

	static JsonObject finding(RegisterFinding finding) {
		JsonObject object = new JsonObject();
		object.addProperty("id", finding.id());
		object.addProperty("severity", word(finding.severity()));
		object.addProperty("x", finding.place().x());
		object.addProperty("y", finding.place().y());
		finding.measured().ifPresent(value -> object.addProperty("measured", value));
		finding.limit().ifPresent(value -> object.addProperty("limit", value));
		object.addProperty("message", finding.message());
		object.addProperty("cure", finding.cure());
		return object;
	}

	private static String word(Enum<?> value) {
		return value.name().toLowerCase(Locale.ROOT);
	}

	/** The same for people. */
	void print(PrintWriter out) {
		Lie lie = fit.lie();
		out.println(text("%s fit of %d marks: residuals %.3f mm rms, %.3f mm at most; %d coordinates to spare",
				word(fit.kind()), fit.designed().size(), fit.rms(), fit.max(), fit.redundancy()));
		double[] rows = fit.map().rows();
		for (int row = 0; row < 3; row++) {
			out.println(text("  %16.9g %16.9g %16.9g", rows[3 * row], rows[3 * row + 1], rows[3 * row + 2]));
		}
		out.println(text("scale %.6f along x, %.6f along y; turned by %.4f degrees, skewed by %.4f degrees", lie.scaleX(),
				lie.scaleY(), Math.toDegrees(lie.rotation()), Math.toDegrees(lie.skew())));
		for (int i = 0; i < fit.residuals().size(); i++) {
			Point residual = fit.residuals().get(i);
			out.println(text("  mark %d: %s, %s off", i + 1, Length.text(residual.x(), DECIMALS), Length.text(residual.y(), DECIMALS)));
		}
		lengths.ifPresent(found -> out.println(text("lengths agree within %.3f mm rms; %d to spare. They do not tell where the sheet lies, nor whether it is mirrored.",
				found.rms(), found.redundancy())));
		places.forEach(place -> print(place, out));
		printer.ifPresent(profile -> out.println(text("kept as the printer “%s”", profile.name())));
		for (RegisterFinding finding : findings()) {
			out.println(text("%s: %s %s", word(finding.severity()), finding.message(), finding.cure()));
		}
	}

	private void print(Point place, PrintWriter out) {
		Point to = fit.map().apply(place);
		String line = text("  %.3f mm, %.3f mm goes to %.3f mm, %.3f mm", place.x(), place.y(), to.x(), to.y());
		if (sigma.isPresent()) {
			Point error = fit.errorAt(place, sigma.getAsDouble());
			line += text("; standard error %.3f mm, %.3f mm", error.x(), error.y());
		}
		out.println(line);
	}

	private static String text(String form, Object... values) {
		return String.format(Locale.ROOT, form, values);
	}
}
