package org.eclipse.jface.util;

/**
 * The assertions that GEF 3.2 expects of JFace, which dropped the class in favour of
 * {@link org.eclipse.core.runtime.Assert}. It lives in a fragment of GEF, so that nobody else sees it and no package
 * of JFace is extended.
 */
public final class Assert {

	private Assert() {
	}

	public static boolean isLegal(boolean expression) {
		return org.eclipse.core.runtime.Assert.isLegal(expression);
	}

	public static boolean isLegal(boolean expression, String message) {
		return org.eclipse.core.runtime.Assert.isLegal(expression, message);
	}

	public static void isNotNull(Object object) {
		org.eclipse.core.runtime.Assert.isNotNull(object);
	}

	public static void isNotNull(Object object, String message) {
		org.eclipse.core.runtime.Assert.isNotNull(object, message);
	}

	public static boolean isTrue(boolean expression) {
		return org.eclipse.core.runtime.Assert.isTrue(expression);
	}

	public static boolean isTrue(boolean expression, String message) {
		return org.eclipse.core.runtime.Assert.isTrue(expression, message);
	}
}
