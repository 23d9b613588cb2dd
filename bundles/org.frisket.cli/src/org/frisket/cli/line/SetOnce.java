package org.frisket.cli.line;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * Options such as {@code --set OPTION=VALUE} are given several times, but each of what they set only once: which of two
 * values is meant, nobody can tell.
 */
public final class SetOnce {

	private SetOnce() {
	}

	/** @throws ParameterException if something is set twice */
	public static void check(ParseResult parsed) {
		for (OptionSpec option : parsed.matchedOptions()) {
			if (Map.class.isAssignableFrom(option.type())) {
				check(option, parsed);
			}
		}
		if (parsed.hasSubcommand()) {
			check(parsed.subcommand());
		}
	}

	private static void check(OptionSpec option, ParseResult parsed) {
		Set<String> names = new HashSet<>();
		for (String text : option.originalStringValues()) {
			String name = text.substring(0, Math.max(0, text.indexOf('=')));
			if (!names.add(name)) {
				throw new ParameterException(parsed.commandSpec().commandLine(),
						option.longestName() + ": “" + name + "” is given twice");
			}
		}
	}
}
