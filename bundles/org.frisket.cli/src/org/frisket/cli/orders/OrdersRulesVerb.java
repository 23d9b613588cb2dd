package org.frisket.cli.orders;

import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.orders.stages.StageRule;
import org.frisket.orders.stages.StageRules;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What must be so before a job goes on. */
@Command(name = "rules", description = "Lists what must be so before a job goes to another stage, or turns one of these rules on or off for all desks.", sortOptions = false)
final class OrdersRulesVerb implements Callable<Integer> {

	@ParentCommand
	private OrdersVerb orders;

	@Parameters(index = "0", arity = "0..1", paramLabel = "RULE", description = "Of which rule.")
	private String rule;

	@Parameters(index = "1", arity = "0..1", paramLabel = "on|off", description = "What it is to be.")
	private String state;

	@Override
	public Integer call() throws Refusal {
		if (rule != null && !"on".equals(state) && !"off".equals(state)) {
			throw new Refusal("say whether “" + rule + "” is to be on or off");
		}
		return orders.desk(studio -> {
			StageRules rules = new StageRules(studio);
			if (rule != null) {
				rules.set(rule, "on".equals(state));
			}
			JsonArray all = new JsonArray();
			for (StageRule each : StageRules.all()) {
				JsonObject object = new JsonObject();
				object.addProperty("rule", each.id());
				object.addProperty("on", rules.isOn(each));
				object.addProperty("title", each.title());
				all.add(object);
				if (!orders.isJson()) {
					orders.out().printf("%-24s %-3s  %s%n", each.id(), rules.isOn(each) ? "on" : "off", each.title());
				}
			}
			if (orders.isJson()) {
				JsonObject root = new JsonObject();
				root.add("rules", all);
				orders.out().println(root);
			}
			return Status.DONE;
		});
	}
}
