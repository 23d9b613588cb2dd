package org.frisket.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.prepare.Fitness;
import org.frisket.prepare.FontFitness;
import org.frisket.prepare.checks.Limits;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Fitness of fonts for machines: an object with one array, {@code fonts}; what cannot be measured is null. */
final class FitnessJson {

	private FitnessJson() {
	}

	static String text(List<FontFitness.Font> fonts, Limits limits) {
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
			OptionalDouble least = fitness.smallestHeight(limits);
			object.addProperty("smallestHeight", least.isPresent() ? least.getAsDouble() : null);
			array.add(object);
		}
		JsonObject root = new JsonObject();
		root.add("fonts", array);
		return new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create().toJson(root);
	}

	private static Double value(Optional<Fitness.Measure> measure) {
		return measure.map(Fitness.Measure::value).orElse(null);
	}
}
