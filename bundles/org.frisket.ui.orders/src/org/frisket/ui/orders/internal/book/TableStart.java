package org.frisket.ui.orders.internal.book;

import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.impl.factory.primitive.IntSets;

/**
 * Has the collections that the table paints with find what they are made of. They look for it once, by way of the
 * thread's class loader, and that of a bundle does not see it; the table would then stay blank and say nothing.
 */
final class TableStart {

	private TableStart() {
	}

	/** To be called before the first table is made; again does nothing. */
	static void prepare() {
		Thread thread = Thread.currentThread();
		ClassLoader usual = thread.getContextClassLoader();
		thread.setContextClassLoader(IntSets.class.getClassLoader());
		try {
			initialize(Sets.class);
			initialize(Maps.class);
		} finally {
			thread.setContextClassLoader(usual);
		}
	}

	private static void initialize(Class<?> factories) {
		try {
			Class.forName(factories.getName(), true, factories.getClassLoader());
		} catch (ClassNotFoundException impossible) {
			throw new IllegalStateException(impossible);
		}
	}
}
