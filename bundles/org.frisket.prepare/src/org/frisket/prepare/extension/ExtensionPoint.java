package org.frisket.prepare.extension;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;

/**
 * What has been contributed to an extension point, read when asked for and ordered by id, so that the order does not
 * hang on the order in which bundles were installed.
 *
 * @param id   the full id of the extension point
 * @param type the interface its entries implement
 */
public record ExtensionPoint<T>(String id, Class<T> type) {

	/** Empty where there is no extension registry, as in plain Java. */
	public List<Contribution<T>> contributions() {
		IExtensionRegistry registry = RegistryFactory.getRegistry();
		if (registry == null) {
			return List.of();
		}
		return Arrays.stream(registry.getConfigurationElementsFor(id))
				.map(element -> new Contribution<>(element, type))
				.sorted(Comparator.comparing(Contribution<T>::id).thenComparing(Contribution::bundle)).toList();
	}
}
