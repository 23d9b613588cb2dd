package org.frisket.cli.print;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.frisket.cli.line.Json;
import org.frisket.cli.work.FindingsJson;
import org.frisket.cli.work.Report;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Length;
import org.frisket.geometry.Point;
import org.frisket.model.RegisterMark;
import org.frisket.prepare.Finding;
import org.frisket.prepare.extension.Contribution;
import org.frisket.print.output.PrintAndCut;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.output.SheetMarks;
import org.frisket.print.register.Registration;
import org.frisket.sheets.SheetName;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;

/** What is answered about prints and their cuts. */
final class PrintAndCutReport {

	private static final int DECIMALS = 3;

	/** A sheet with its files. */
	private record Written(PrintAndCut sheet, Map<PrintAndCut.Role, Path> files) {
	}

	private final PrintOptions options;
	private final Contribution<Exporter> format;
	private final List<Finding> makeready;
	private final List<Written> written = new ArrayList<>();

	/** @param makeready what is wrong with the job itself */
	PrintAndCutReport(PrintOptions options, Contribution<Exporter> format, List<Finding> makeready) {
		this.options = options;
		this.format = format;
		this.makeready = makeready;
	}

	void add(PrintAndCut sheet, Map<PrintAndCut.Role, Path> files) {
		written.add(new Written(sheet, files));
	}

	void print(PrintWriter out) {
		out.println(options.printer().map(profile -> text("scale and skew of the printer “%s” are undone (measured on %s)",
				profile.name(), profile.measured())).orElse("no printer profile: printed as designed"));
		for (Written each : written) {
			PrintSheet print = each.sheet().print();
			out.println(text("%s: %s × %s, %d marks%s", SheetName.of(print.faces().sheet()),
					Length.text(print.faces().sheet().getWidth(), 2), Length.text(print.faces().sheet().getHeight(), 2),
					print.plan().map(plan -> plan.marks().size()).orElse(0),
					print.proposed() && print.plan().isPresent() ? ", proposed" : ""));
			each.files().values().forEach(file -> out.println("wrote " + file));
			each.sheet().fit().ifPresent(fit -> print("cuts", fit, out));
			each.sheet().backFit().ifPresent(fit -> print("cuts on the back", fit, out));
			new Report(out).findings(each.sheet().findings());
		}
		new Report(out).findings(makeready);
		if (!PrintAndCut.showsMarks(format)) {
			out.println("marks are not shown in ." + Exporters.ending(format) + " files: the format does not tell them from work");
		}
	}

	private static void print(String what, Registration fit, PrintWriter out) {
		out.println(text("%s follow the print: %s fit of %d marks, residuals %.3f mm rms, %.3f mm at most", what,
				word(fit.kind()), fit.designed().size(), fit.rms(), fit.max()));
		for (int i = 0; i < fit.residuals().size(); i++) {
			Point residual = fit.residuals().get(i);
			out.println(text("  mark %d: %s, %s off", i + 1, Length.text(residual.x(), DECIMALS), Length.text(residual.y(), DECIMALS)));
		}
		fit.findings().forEach(finding -> out.println(text("%s: %s %s", word(finding.severity()), finding.message(), finding.cure())));
	}

	String json() {
		JsonObject root = new JsonObject();
		root.add("printer", options.printer().isPresent() ? RegisterReport.printer(options.printer().get()) : JsonNull.INSTANCE);
		root.addProperty("format", Exporters.ending(format));
		root.addProperty("marksShown", PrintAndCut.showsMarks(format));
		JsonArray sheets = new JsonArray();
		written.forEach(each -> sheets.add(sheet(each)));
		root.add("sheets", sheets);
		root.add("findings", FindingsJson.of(makeready));
		return Json.text(root);
	}

	private static JsonObject sheet(Written each) {
		PrintSheet print = each.sheet().print();
		JsonObject object = new JsonObject();
		object.addProperty("number", print.faces().number());
		object.addProperty("name", SheetName.of(print.faces().sheet()));
		JsonObject files = new JsonObject();
		each.files().forEach((role, path) -> files.addProperty(word(role), path.toString()));
		object.add("files", files);
		JsonObject boxes = new JsonObject();
		boxes.add("page", box(print.faces().page()));
		boxes.add("trim", box(print.trim()));
		boxes.add("bleed", box(print.bleed()));
		print.code().ifPresent(code -> boxes.add("code", box(code.square())));
		print.ruler().ifPresent(ruler -> boxes.add("ruler", box(ruler.bounds())));
		object.add("boxes", boxes);
		print.code().ifPresent(code -> object.addProperty("code", code.code().text()));
		object.addProperty("marksProposed", print.proposed() && print.plan().isPresent());
		JsonArray marks = new JsonArray();
		print.plan().ifPresent(plan -> SheetMarks.toModel(plan).forEach(mark -> marks.add(mark(mark))));
		object.add("marks", marks);
		each.sheet().fit().ifPresent(fit -> object.add("fit", fit(fit)));
		each.sheet().backFit().ifPresent(fit -> object.add("backFit", fit(fit)));
		object.add("findings", FindingsJson.of(each.sheet().findings()));
		return object;
	}

	private static JsonObject fit(Registration fit) {
		JsonObject object = new JsonObject();
		object.addProperty("fit", word(fit.kind()));
		JsonArray matrix = new JsonArray();
		for (double number : fit.map().rows()) {
			matrix.add(number);
		}
		object.add("matrix", matrix);
		object.addProperty("rms", fit.rms());
		object.addProperty("max", fit.max());
		JsonArray residuals = new JsonArray();
		fit.residuals().forEach(residual -> residuals.add(RegisterReport.pair(residual)));
		object.add("residuals", residuals);
		JsonArray findings = new JsonArray();
		fit.findings().forEach(finding -> findings.add(RegisterReport.finding(finding)));
		object.add("findings", findings);
		return object;
	}

	private static JsonObject mark(RegisterMark mark) {
		JsonObject object = new JsonObject();
		object.addProperty("kind", mark.getKind().getName());
		object.addProperty("x", mark.getX());
		object.addProperty("y", mark.getY());
		object.addProperty("turn", mark.getTurn());
		object.addProperty("size", mark.getSize());
		object.addProperty("weight", mark.getWeight());
		object.addProperty("quiet", mark.getQuiet());
		return object;
	}

	/** Left, top, right and bottom; an empty array for none. */
	private static JsonArray box(Bounds box) {
		JsonArray sides = new JsonArray();
		if (!box.isEmpty()) {
			sides.add(box.minX());
			sides.add(box.minY());
			sides.add(box.maxX());
			sides.add(box.maxY());
		}
		return sides;
	}

	private static String word(Enum<?> value) {
		return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static String text(String form, Object... values) {
		return String.format(Locale.ROOT, form, values);
	}
}
