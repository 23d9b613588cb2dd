package org.frisket.cli.work;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.frisket.cli.line.Json;
import org.frisket.geometry.measure.RegionMeasures;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.Unit;
import org.frisket.prepare.fonts.Fitness;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Findings for machines: an object with the arrays {@code findings}, {@code bases} of the limits and, how
 * they measure, {@code wordings};
 * and {@code measures} of all elements where they are asked for. */
public final class FindingsJson {

	private FindingsJson() {
	}

	public static JsonArray of(List<Finding> findings) {
		JsonArray array = new JsonArray();
		for (Finding finding : findings) {
			JsonObject object = new JsonObject();
			object.addProperty("id", finding.id());
			object.addProperty("severity", finding.severity().name().toLowerCase(Locale.ROOT));
			object.addProperty("element", finding.element());
			object.addProperty("x", finding.place().x());
			object.addProperty("y", finding.place().y());
			finding.measured().ifPresent(value -> object.addProperty("measured", value));
			finding.limit().ifPresent(value -> object.addProperty("limit", value));
			if (finding.unit() != Unit.MM) {
				object.addProperty("unit", finding.unit().symbol());
			}
			if (finding.more() > 0) {
				object.addProperty("more", finding.more());
			}
			object.addProperty("message", finding.message());
			object.addProperty("cure", finding.cure());
			array.add(object);
		}
		return array;
	}

	/** @param bases what of the limits is common practice only, a sentence for each stock */
	public static String text(List<Finding> findings, List<String> bases, Map<PreparedElement, Fitness> wordings,
			Map<PreparedElement, RegionMeasures> measures) {
		JsonObject root = new JsonObject();
		root.add("findings", of(findings));
		JsonArray sentences = new JsonArray();
		bases.forEach(sentences::add);
		root.add("bases", sentences);
		JsonArray measured = new JsonArray();
		wordings.forEach((element, fitness) -> measured.add(FitnessJson.wording(element, fitness)));
		root.add("wordings", measured);
		if (!measures.isEmpty()) {
			JsonArray all = new JsonArray();
			measures.forEach((element, each) -> all.add(MeasuresReport.json(element, each)));
			root.add("measures", all);
		}
		return Json.text(root);
	}
}
