/**
 * For authors of bundles: tests that every bundle of calculators must pass, to be run in its own build. Extend
 * {@link org.hidewright.testkit.BundleContract}, which reads declarations, texts and code, and asks every calculator many times; work
 * single calculations with {@link org.hidewright.testkit.CalculatorRun}.
 *
 * <p>What is asked comes of {@code TypicalAnswers} (presets and examples) and of {@link org.hidewright.api.trials} (one answer changed, and
 * sets that are drawn); {@code Bench} asks it as a host would, {@code Trials} keeps what one calculator told. Each thing that can be
 * wrong has a class of its own, which gives sentences.
 */
package org.hidewright.testkit;
