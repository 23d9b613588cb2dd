/** The checks that come with Frisket; they are contributed to {@code org.frisket.prepare.checks} as others are. */
package org.frisket.prepare.internal.checks;
