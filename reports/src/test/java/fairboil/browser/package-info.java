/**
 * Reports in a real browser: Chromium through its driver, both as installed on the machine. {@link
 * fairboil.browser.Browser} finds and starts them, {@link fairboil.browser.Reports} makes the
 * pages. Where there is no browser the tests are skipped, unless {@code
 * -Dfairboil.browser=required}.
 */
package fairboil.browser;
