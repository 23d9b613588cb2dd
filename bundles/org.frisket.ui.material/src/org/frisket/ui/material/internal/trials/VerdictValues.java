package org.frisket.ui.material.internal.trials;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.core.commands.IParameterValues;
import org.frisket.material.trials.Verdict;

/** The verdicts that the command can be given, for the lists of keys and commands. */
public final class VerdictValues implements IParameterValues {

	@Override
	public Map<String, String> getParameterValues() {
		Map<String, String> values = new LinkedHashMap<>();
		for (Verdict verdict : Verdict.values()) {
			values.put(verdict.text(), verdict.word());
		}
		return values;
	}
}
