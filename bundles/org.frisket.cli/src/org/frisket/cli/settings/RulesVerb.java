package org.frisket.cli.settings;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Json;
import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbOptions;
import org.frisket.material.advice.RulesOfThumb;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The rules of thumb that hold where nothing was tried. */
@Command(name = "rules", description = "Shows the rules of thumb that advice rests on where nothing was tried, and changes them for the studio.", sortOptions = false)
final class RulesVerb implements Callable<Integer> {

	@Option(names = "--set", paramLabel = "NAME=VALUE", description = "Makes it a rule of the studio, such as start-pressure=40.")
	private Map<String, String> changes = Map.of();

	@Option(names = "--reset", description = "Takes back what the studio changed; before --set.")
	private boolean reset;

	@Option(names = "--json", description = "Writes JSON for machines.")
	private boolean json;

	@Mixin
	private VerbOptions verb = new VerbOptions();

	@Override
	public Integer call() throws Refusal {
		verb.chooseStudio();
		RulesOfThumb rules = reset || !changes.isEmpty() ? SettingsDesk.change(settings -> {
			Map<String, String> texts = new LinkedHashMap<>(reset ? Map.of() : settings.rules());
			texts.putAll(changes);
			RulesOfThumb changed = RulesOfThumb.of(texts);
			// only what is the studio's own is kept, so that better ones can come with the product
			Map<String, String> own = new LinkedHashMap<>(changed.texts());
			own.keySet().removeIf(name -> !changed.isOwn(name));
			settings.saveRules(own);
			return changed;
		}) : SettingsDesk.read(settings -> RulesOfThumb.of(settings.rules()));
		if (json) {
			verb.out().println(Json.text(json(rules)));
		} else {
			RulesOfThumb.options().forEach(option -> verb.out().printf("%s=%s: %s (%s)%n", option.name(),
					rules.texts().get(option.name()), option.description(), rules.isOwn(option.name())
							? "rule of the studio; usual is " + usual(option.name())
							: "rule of thumb, no source"));
		}
		return Status.DONE;
	}

	private static String usual(String name) {
		return RulesOfThumb.USUAL.texts().get(name);
	}

	private static JsonObject json(RulesOfThumb rules) {
		JsonObject root = new JsonObject();
		rules.texts().forEach((name, value) -> {
			JsonObject rule = new JsonObject();
			rule.addProperty("value", value);
			rule.addProperty("usual", usual(name));
			rule.addProperty("own", rules.isOwn(name));
			root.add(name, rule);
		});
		return root;
	}
}
