/** Whether the screen is light, dark, or as the system has it. */
package org.frisket.app.internal.appearance;
