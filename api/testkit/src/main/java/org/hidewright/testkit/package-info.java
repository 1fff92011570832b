/**
 * For authors of bundles: tests that every bundle of calculators must pass, to be run in its own build. Extend
 * {@link org.hidewright.testkit.BundleContract}; work single calculations with {@link org.hidewright.testkit.CalculatorRun}.
 */
package org.hidewright.testkit;
