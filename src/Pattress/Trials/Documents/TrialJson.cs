using System.Text.Json;
using Pattress.Jobs;
using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>Writes the answer as JSON: snake_case, units in the names.</summary>
public static class TrialJson
{
    /// <summary>The document's text.</summary>
    /// <param name="say">Gives the sentence of a reason, written as <c>why</c> beside its code; without it codes stand alone.</param>
    public static string Write(TrialAnswer answer, Func<Reason, string>? say = null) => JsonOut.Text(json => Write(json, answer, say));

    /// <summary>Into a document that is being written, as one object.</summary>
    public static void Write(Utf8JsonWriter json, TrialAnswer answer, Func<Reason, string>? say = null)
    {
        json.WriteStartObject();
        if (answer.Notes.Count > 0) json.WriteTexts("notes", answer.Notes);
        json.WriteNumber("fractile", answer.Settings.Fractile);
        json.WriteNumber("confidence", answer.Settings.Confidence);
        json.WriteString("law", answer.Settings.Law == StrengthLaw.Normal ? "normal" : "lognormal");
        json.WriteObjects("kinds", answer.Kinds, (j, k) => WriteKind(j, k, answer, say));
        if (answer.NewKind is { } fresh) WriteExpected(json, "new_kind", fresh);
        json.WriteSome("comparisons", answer.Comparisons, WriteComparison);
        json.WriteSome("effects", answer.Effects, WriteEffect);
        json.WriteSome("assumptions", answer.Reasons, (j, r) => WriteReason(j, r, say));
        json.WriteEndObject();
    }

    private static void WriteKind(Utf8JsonWriter json, KindResult kind, TrialAnswer answer, Func<Reason, string>? say)
    {
        json.WriteString("kind", kind.Kind);
        json.WriteNumber("n", kind.Tests.Count);
        if (kind.Stopped > 0) json.WriteNumber("stopped", kind.Stopped);
        json.WriteNumber("mean_n", kind.MeanN);
        json.WriteMaybe("s_n", kind.StandardDeviationN);
        json.WriteMaybe("cov", kind.Cov);
        if (kind.Characteristic is { } characteristic) WriteCharacteristic(json, characteristic, answer.Settings);
        if (kind.Weibull is { } weibull) WriteWeibull(json, weibull);
        json.WriteObjects("suspects", kind.Suspects, WriteSuspect);
        if (kind.Expected is { } expected) WriteExpected(json, "predictive", expected);
        json.WriteObjects("tests", kind.Tests, (j, t) => WriteTest(j, t, answer.FurtherColumns));
        json.WriteObjects("reasons", kind.Reasons, (j, r) => WriteReason(j, r, say));
    }

    private static void WriteReason(Utf8JsonWriter json, Reason reason, Func<Reason, string>? say)
    {
        json.WriteString("code", reason.Code);
        if (say is not null) json.WriteString("why", say(reason));
    }

    private static void WriteCharacteristic(Utf8JsonWriter json, CharacteristicLoad characteristic, TrialSettings settings)
    {
        json.WriteStartObject("characteristic");
        json.WriteNumber("value_n", characteristic.ValueN);
        json.WriteNumber("fractile", settings.Fractile);
        json.WriteNumber("confidence", settings.Confidence);
        json.WriteNumber("k", characteristic.K);
        json.WriteString("method", characteristic.Method);
        json.WriteEndObject();
    }

    private static void WriteWeibull(Utf8JsonWriter json, Weibull weibull)
    {
        json.WriteStartObject("weibull");
        json.WriteNumber("shape", weibull.Shape);
        json.WriteNumber("scale_n", weibull.Scale);
        json.WriteEndObject();
    }

    private static void WriteSuspect(Utf8JsonWriter json, SuspectTest suspect)
    {
        json.WriteNumber("line", suspect.Test.Line);
        json.WriteNumber("load_n", suspect.Test.CountedN);
        json.WriteString("by", suspect.By);
        json.WriteNumber("statistic", suspect.Statistic);
        json.WriteNumber("critical", suspect.Critical);
    }

    private static void WriteExpected(Utf8JsonWriter json, string name, Expected expected)
    {
        json.WriteStartObject(name);
        json.WriteNumber("median_n", expected.MedianN);
        json.WriteNumber("fractile_n", expected.FractileN);
        json.WriteNumber("upper_n", expected.UpperN);
        json.WriteEndObject();
    }

    private static void WriteTest(Utf8JsonWriter json, TrialTest test, IReadOnlyList<string> columns)
    {
        json.WriteNumber("line", test.Line);
        json.WriteNumber("load_n", test.LoadN);
        json.WriteMaybe("load_high_n", test.HighN);
        if (!test.Failed) json.WriteString("outcome", "stopped");
        json.WriteMaybe("pull_low_n", test.Pull?.LowN);
        json.WriteMaybe("pull_high_n", test.Pull?.HighN);
        if (columns.Count == 0) return;
        json.WriteStartObject("further");
        for (int i = 0; i < columns.Count; i++) json.WriteString(columns[i], test.Further[i]);
        json.WriteEndObject();
    }

    private static void WriteComparison(Utf8JsonWriter json, KindComparison comparison)
    {
        json.WriteString("kind", comparison.Kind);
        json.WriteString("other", comparison.Other);
        json.WriteNumber("chance_stronger", comparison.Chance);
        json.WriteNumber("ratio_low", comparison.RatioLow);
        json.WriteNumber("ratio_high", comparison.RatioHigh);
        json.WriteBoolean("decided", comparison.Decided);
    }

    private static void WriteEffect(Utf8JsonWriter json, ColumnEffect effect)
    {
        json.WriteString("column", effect.Column);
        json.WriteString("level", effect.Effect.Level);
        json.WriteString("against", effect.Effect.Against);
        json.WriteNumber("ratio", effect.Effect.Ratio(0.5));
        json.WriteNumber("ratio_low", effect.Effect.Ratio(0.05));
        json.WriteNumber("ratio_high", effect.Effect.Ratio(0.95));
        json.WriteBoolean("decided", effect.Effect.Decided);
        json.WriteBoolean("counts", effect.Counts);
    }
}
