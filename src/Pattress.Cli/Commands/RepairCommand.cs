using System.Globalization;
using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Jobs;
using Pattress.Jobs.Own;
using Pattress.Jobs.Repairs;

namespace Pattress.Cli.Commands;

/// <summary>A fixing has come away: what can be done.</summary>
internal static class RepairCommand
{
    public const string Torn = "--torn", Crushed = "--crushed", Record = "--record";

    public static int Run(Call call)
    {
        var values = call.Arguments.Values;
        var text = call.Read();
        if (text.Value is not { } json) return Answering.Refuse(call, text.Problems);
        var job = JobReader.Read(json);
        if (job.Value is not { } read) return Answering.Refuse(call, job.Problems);
        if (!int.TryParse(values[2], NumberStyles.None, CultureInfo.InvariantCulture, out int bracket)) return Wrong(call, values[2], "a bracket of the plan, counted from 1");
        if (!double.TryParse(values[3], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double hole) || hole is <= 0 or > 200) return Wrong(call, values[3], "the hole's width in mm, up to 200");
        if (call.Arguments.Has(Record)) return Recorded(call, read, values[1], bracket - 1);
        var ways = PuttingRight.Of(read, values[1], bracket - 1, new(hole, call.Arguments.Has(Torn), call.Arguments.Has(Crushed)), PlanData.Embedded);
        if (ways.Count == 0) return Wrong(call, $"{values[1]} {values[2]}", "a thing of the job and one of its brackets");
        call.Terminal.Out.Write(call.Json ? RepairJson.Write(ways, read.Settings) + "\n" : Text(call, ways, new Say(read.Settings)));
        return ExitCode.Answered;
    }

    /// <summary>The job with the failure among its own tests, so that plans learn from it.</summary>
    private static int Recorded(Call call, Job job, string item, int bracket)
    {
        var now = call.Terminal.Clock.GetUtcNow();
        var failure = LaterFailure.Of(job, Planner.Plan(job, PlanData.Embedded, call.Stop), item, bracket, Guid.CreateVersion7(now).ToString(), now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        if (failure is null) return Wrong(call, item, "a thing of the job and one of its brackets that something pulls at");
        call.Terminal.Out.Write(JobWriter.Write(job with { Trials = [.. job.Trials, failure] }) + "\n");
        return ExitCode.Answered;
    }

    private static int Wrong(Call call, string found, string allowed) => Answering.Refuse(call, [new Problem("wrong_words", "pattress repair", found, allowed)]);

    private static string Text(Call call, IReadOnlyList<RepairAnswer> ways, Say say)
    {
        var sheet = new Sheet(call.Terminal, say.Settings);
        sheet.Heading(sheet.T("repair"));
        for (int i = 0; i < ways.Count; i++) sheet.Item($"{i + 1}.", One(sheet, ways[i], say));
        sheet.Paragraph(sheet.T("repair.note"));
        foreach (string assumed in ways.SelectMany(w => w.Assumptions).Select(say.Sentence).Distinct(StringComparer.Ordinal)) sheet.Item("-", sheet.T("assumed.one", Said.Words(assumed)));
        return sheet.ToString();
    }

    private static string One(Sheet sheet, RepairAnswer way, Say say)
    {
        string what = $"{sheet.Verdict(way.Verdict)}: {say.Sentence(way.Why)}";
        // What is advised against has no price.
        if (way.Verdict == Verdict.NotHere) return what;
        string says = what + " " + sheet.T("repair.cost", Said.Words(say.At(way.At)), Said.Words(way.Minutes.ToString("0.#", CultureInfo.InvariantCulture)), Said.Money(way.Price));
        return way.WaitHours > 0 ? $"{says}; {sheet.T("repair.wait", Said.Words(way.WaitHours.ToString("0", CultureInfo.InvariantCulture)))}" : says + ".";
    }
}
