package org.frisket.cli.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.frisket.cli.line.Json;
import org.frisket.orders.paper.DocketFacts;
import org.frisket.orders.paper.quote.QuoteLine;
import org.frisket.orders.paper.quote.QuoteSheet;
import org.frisket.orders.paper.quote.QuoteSums;
import org.frisket.orders.paper.quote.TaxLine;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What papers say, for machines: lengths in mm, times in seconds, money as decimals in quotes so that no digit is lost. */
final class DocketJson {


	private DocketJson() {
	}

	static String text(DocketFacts facts, Optional<QuoteSheet> quote) {
		JsonObject root = new JsonObject();
		root.addProperty("number", facts.number());
		root.addProperty("code", facts.code());
		root.addProperty("title", facts.title());
		root.addProperty("customer", facts.customer());
		root.addProperty("due", day(facts.due()));
		root.addProperty("stage", OrderReport.word(facts.stage()));
		root.addProperty("quantity", facts.quantity());
		root.addProperty("width", facts.width());
		root.addProperty("height", facts.height());
		root.add("parts", Json.GSON.toJsonTree(facts.parts()));
		root.add("work", Json.GSON.toJsonTree(facts.work()));
		root.add("sheets", Json.GSON.toJsonTree(facts.sheets()));
		root.addProperty("seconds", facts.seconds());
		root.add("blocking", texts(facts.blocking()));
		root.add("cautions", texts(facts.cautions()));
		root.addProperty("notes", facts.notes());
		JsonArray signed = new JsonArray();
		for (DocketFacts.Signed each : facts.signed()) {
			JsonObject object = new JsonObject();
			object.addProperty("stage", OrderReport.word(each.stage()));
			object.addProperty("day", day(each.day()));
			object.addProperty("who", each.who());
			signed.add(object);
		}
		root.add("signed", signed);
		quote.ifPresent(sheet -> root.add("quote", quote(sheet)));
		return Json.text(root);
	}

	private static String day(Optional<LocalDate> day) {
		return day.map(LocalDate::toString).orElse(null);
	}

	private static JsonArray texts(List<String> texts) {
		JsonArray array = new JsonArray();
		texts.forEach(array::add);
		return array;
	}

	/** With all its decimals. */
	static String amount(BigDecimal amount) {
		return amount.toPlainString();
	}

	private static String rate(BigDecimal percent) {
		return percent.stripTrailingZeros().toPlainString();
	}

	private static JsonObject quote(QuoteSheet sheet) {
		JsonObject object = new JsonObject();
		object.addProperty("currency", sheet.currency().getCurrencyCode());
		object.addProperty("date", day(sheet.date()));
		object.addProperty("validUntil", day(sheet.validUntil()));
		object.addProperty("rounding", sheet.rounding().name().toLowerCase(Locale.ROOT));
		QuoteSums sums = sheet.sums();
		JsonArray lines = new JsonArray();
		sums.lines().forEach(line -> lines.add(line(line)));
		object.add("lines", lines);
		object.addProperty("cost", amount(sums.cost()));
		object.addProperty("sum", amount(sums.sum()));
		object.addProperty("discount", amount(sums.discount()));
		object.addProperty("net", amount(sums.net()));
		JsonArray taxes = new JsonArray();
		for (TaxLine tax : sums.taxes()) {
			JsonObject each = new JsonObject();
			each.addProperty("rate", rate(tax.rate()));
			each.addProperty("net", amount(tax.net()));
			each.addProperty("tax", amount(tax.tax()));
			taxes.add(each);
		}
		object.add("taxes", taxes);
		object.addProperty("total", amount(sums.total()));
		object.add("gaps", texts(sheet.gaps()));
		return object;
	}

	private static JsonObject line(QuoteLine line) {
		JsonObject object = new JsonObject();
		object.addProperty("kind", line.kind().name().toLowerCase(Locale.ROOT));
		object.addProperty("name", line.name());
		object.addProperty("cost", amount(line.cost()));
		object.addProperty("markUp", rate(line.markUp()));
		object.addProperty("price", amount(line.price()));
		object.addProperty("discount", amount(line.discount()));
		object.addProperty("rate", rate(line.rate()));
		object.addProperty("tax", line.tax().map(DocketJson::amount).orElse(null));
		return object;
	}
}
