package org.frisket.prepare.extension;

import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;

/**
 * One entry of an extension point. Its attributes can be listed without loading a class of the bundle that made it;
 * {@link #create()} loads it.
 *
 * @param <T> the interface the extension point asks for
 */
public final class Contribution<T> {

	private static final String ID = "id";
	private static final String CLASS = "class";

	private final IConfigurationElement element;
	private final Class<T> type;

	Contribution(IConfigurationElement element, Class<T> type) {
		this.element = element;
		this.type = type;
	}

	public String id() {
		return attribute(ID).orElse("");
	}

	/** The symbolic name of the bundle that made the contribution. */
	public String bundle() {
		return element.getContributor().getName();
	}

	public Optional<String> attribute(String name) {
		return Optional.ofNullable(element.getAttribute(name));
	}

	/**
	 * A new instance of the contributed class.
	 *
	 * @throws ContributionException if the class is missing, of another type, or throws
	 */
	public T create() throws ContributionException {
		try {
			return type.cast(element.createExecutableExtension(CLASS));
		} catch (CoreException | ClassCastException | LinkageError e) {
			throw failed(e);
		}
	}

	/** The failure of this contribution while it was at work, told with its bundle's name. */
	public ContributionException failed(Throwable cause) {
		return new ContributionException(this, cause);
	}
}
