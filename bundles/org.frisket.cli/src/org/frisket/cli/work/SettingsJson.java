package org.frisket.cli.work;

import java.util.List;

import org.frisket.material.advice.Caution;
import org.frisket.material.trials.Settings;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Settings and cautions for machines. */
public final class SettingsJson {

	private SettingsJson() {
	}

	/** Exposure in mm, pressure and speed in steps of the machine. */
	public static JsonObject of(Settings settings) {
		JsonObject object = new JsonObject();
		object.addProperty("exposure", settings.exposure());
		object.addProperty("pressure", settings.pressure());
		object.addProperty("speed", settings.speed());
		object.addProperty("passes", settings.passes());
		return object;
	}

	public static JsonArray cautions(List<Caution> cautions) {
		JsonArray array = new JsonArray();
		for (Caution caution : cautions) {
			JsonObject object = new JsonObject();
			object.addProperty("id", caution.id());
			object.addProperty("blocking", caution.isBlocking());
			object.addProperty("text", caution.text());
			array.add(object);
		}
		return array;
	}

	public static JsonArray sentences(List<String> sentences) {
		JsonArray array = new JsonArray();
		sentences.forEach(array::add);
		return array;
	}
}
