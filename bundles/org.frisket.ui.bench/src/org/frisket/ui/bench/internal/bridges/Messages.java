package org.frisket.ui.bench.internal.bridges;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BridgeMode_failed;
	public static String BridgeMode_measuring;
	public static String BridgeMode_none;
	public static String BridgeTool_angle;
	public static String BridgeTool_size;

	static {
		initializeMessages("org.frisket.ui.bench.internal.bridges.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
