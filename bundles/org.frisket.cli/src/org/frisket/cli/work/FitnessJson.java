package org.frisket.cli.work;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.cli.line.Json;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.prepare.fonts.FontFitness;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;

/** Fitness of fonts for machines: an object with one array, {@code fonts}; what cannot be measured is null. */
public final class FitnessJson {

	private FitnessJson() {
	}

	public static String text(List<FontFitness.Font> fonts) {
		JsonArray array = new JsonArray();
		for (FontFitness.Font font : fonts) {
			Fitness fitness = font.fitness();
			JsonObject object = new JsonObject();
			object.addProperty("name", font.name());
			object.addProperty("file", font.file());
			object.addProperty("thinnestStroke", value(fitness.thinnestStroke()));
			object.addProperty("narrowestGap", value(fitness.narrowestGap()));
			object.addProperty("smallestCounter", value(fitness.smallestCounter()));
			object.addProperty("pieces", fitness.pieces());
			OptionalDouble least = fitness.smallestHeight();
			object.addProperty("smallestHeight", least.isPresent() ? least.getAsDouble() : null);
			array.add(object);
		}
		JsonObject root = new JsonObject();
		root.add("fonts", array);
		return Json.text(root);
	}

	/** With places in the job's frame. */
	static JsonObject wording(PreparedElement element, Fitness fitness) {
		JsonObject object = new JsonObject();
		object.addProperty("element", element.element().getId());
		object.addProperty("name", element.element().getName());
		object.addProperty("height", fitness.height());
		object.add("thinnestStroke", placed(fitness.thinnestStroke()));
		object.add("narrowestGap", placed(fitness.narrowestGap()));
		object.add("smallestCounter", placed(fitness.smallestCounter()));
		object.add("sharpestPoint", placed(fitness.sharpestPoint()));
		object.add("smallestPiece", placed(fitness.smallestPiece()));
		object.addProperty("pieces", fitness.pieces());
		OptionalDouble least = fitness.smallestHeight();
		object.addProperty("smallestHeight", least.isPresent() ? least.getAsDouble() : null);
		return object;
	}

	private static JsonElement placed(Optional<Fitness.Measure> measure) {
		return measure.<JsonElement>map(found -> {
			JsonObject object = new JsonObject();
			object.addProperty("value", found.value());
			object.addProperty("x", found.place().x());
			object.addProperty("y", found.place().y());
			return object;
		}).orElse(JsonNull.INSTANCE);
	}

	private static Double value(Optional<Fitness.Measure> measure) {
		return measure.map(Fitness.Measure::value).orElse(null);
	}
}
