package org.frisket.cli.settings;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.VerbGroup;
import org.frisket.cli.line.VerbOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The studio's tools. */
@Command(name = "tool", description = "Keeps, removes and lists the studio's tools.", subcommands = { ToolVerb.Add.class,
		ToolVerb.Remove.class, ToolVerb.Listing.class })
final class ToolVerb extends VerbGroup {

	@Command(name = "add", description = "Keeps a tool; one with the same id is replaced.", sortOptions = false)
	static final class Add implements Callable<Integer> {

		@Parameters(paramLabel = "ID", description = "What tells it from other tools.")
		private String id;

		@Option(names = "--kind", required = true, paramLabel = "KIND", description = "blade, creasing-wheel, perforating-blade or pen.")
		private String kind;

		@Option(names = "--set", paramLabel = "OPTION=VALUE", description = "What is known of it; see frisket settings tool list --options.")
		private Map<String, String> values = Map.of();

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			ToolKind of = ToolKind.of(kind).orElseThrow(() -> new Refusal("--kind: “" + kind + "” is not one of "
					+ Arrays.stream(ToolKind.values()).map(ToolKind::word).collect(Collectors.joining(", "))));
			SettingsDesk.change(settings -> {
				settings.save(ToolOptions.tool(of, id, values));
				return null;
			});
			return Status.DONE;
		}
	}

	@Command(name = "remove", description = "Takes a tool away; what was tried and run with it is kept.", sortOptions = false)
	static final class Remove implements Callable<Integer> {

		@Parameters(paramLabel = "ID", description = "Which one.")
		private String id;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			SettingsDesk.change(settings -> {
				if (!settings.removeTool(id)) {
					throw new Refusal("the studio has no tool “" + id + "”; see frisket settings tool list");
				}
				return null;
			});
			return Status.DONE;
		}
	}

	@Command(name = "list", description = "Lists the studio's tools.", sortOptions = false)
	static final class Listing implements Callable<Integer> {

		@Option(names = "--options", description = "Lists what can be set of each kind instead.")
		private boolean options;

		@Mixin
		private VerbOptions verb = new VerbOptions();

		@Override
		public Integer call() throws Refusal {
			verb.chooseStudio();
			var out = verb.out();
			if (options) {
				for (ToolKind kind : ToolKind.values()) {
					out.println(kind.word());
					ToolOptions.of(kind).forEach(option -> out.printf("    %s=%s: %s%n", option.name(),
							option.initial(), option.description()));
				}
				return Status.DONE;
			}
			for (Tool tool : SettingsDesk.read(settings -> settings.tools())) {
				out.println(tool.id() + " (" + tool.kind().word() + "): " + ToolOptions.texts(tool));
			}
			return Status.DONE;
		}
	}
}
