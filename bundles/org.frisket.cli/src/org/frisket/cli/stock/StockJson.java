package org.frisket.cli.stock;

import java.util.List;

import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.StockField;
import org.frisket.material.weights.Measures;
import org.frisket.material.weights.Thickness;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** Stock for machines; weights in g/m² and lb, lengths in mm. What is not known is null. */
final class StockJson {

	/** Of derived numbers. */
	static final int DECIMALS = 6;

	private StockJson() {
	}

	static void caliper(JsonObject object, Thickness caliper) {
		object.addProperty("mm", Measures.rounded(caliper.mm(), DECIMALS));
		object.addProperty("mil", Measures.rounded(caliper.mils(), DECIMALS));
		object.addProperty("um", Measures.rounded(caliper.micrometres(), DECIMALS));
	}

	static JsonObject stock(Stock stock) {
		JsonObject object = new JsonObject();
		object.addProperty("id", stock.id());
		object.addProperty("name", stock.name());
		object.addProperty("description", stock.description());
		object.addProperty("family", StockField.wordOf(stock.family()));
		object.addProperty("grammage", stock.grammage().map(value -> Measures.rounded(value, DECIMALS)).orElse(null));
		object.addProperty("basisWeight", stock.basisWeight().map(Object::toString).orElse(null));
		object.addProperty("caliper",
				stock.caliper().map(value -> Measures.rounded(value.thickness().mm(), DECIMALS)).orElse(null));
		object.addProperty("caliperSource", stock.caliper().map(value -> StockField.wordOf(value.source())).orElse(null));
		object.addProperty("colour", stock.colour());
		object.addProperty("finish", StockField.wordOf(stock.finish()));
		object.addProperty("grain", StockField.wordOf(stock.grain()));
		JsonArray sizes = new JsonArray();
		stock.sizes().forEach(size -> sizes.add(size.toString()));
		object.add("sizes", sizes);
		object.addProperty("price", stock.price().map(Price::amount).orElse(null));
		object.addProperty("currency", stock.price().map(price -> price.currency().getCurrencyCode()).orElse(null));
		object.addProperty("onHand", stock.onHand());
		object.addProperty("lowWater", stock.lowWater());
		object.addProperty("low", stock.isLow());
		object.addProperty("abrasion", stock.abrasion());
		object.addProperty("notes", stock.notes());
		return object;
	}

	static JsonObject list(String name, List<JsonObject> objects) {
		JsonArray array = new JsonArray();
		objects.forEach(array::add);
		JsonObject root = new JsonObject();
		root.add(name, array);
		return root;
	}
}
