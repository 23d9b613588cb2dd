package org.frisket.ui.bench.internal.handlers;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.core.commands.IParameterValues;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/** What a command can be told, under the names by which lists of commands call it. */
public final class NamedValues implements IParameterValues, IExecutableExtension {

	private final Map<String, String> values = new LinkedHashMap<>();

	@Override
	@SuppressWarnings({ "rawtypes", "unchecked" })
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		((Map<String, String>) (Map) data).forEach((name, value) -> values.put(name, value));
	}

	@Override
	public Map<String, String> getParameterValues() {
		return values;
	}
}
