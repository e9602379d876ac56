using System.Globalization;
using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Jobs;
using Pattress.Jobs.Own;

namespace Pattress.Cli.Commands;

/// <summary>The catalogue of the user's own trials: what jobs taught goes in, or out again, and which plans changed because of it is said.</summary>
internal static class TrialsCommand
{
    public const string Undo = "--undo";

    public static int Run(Call call)
    {
        var file = OwnTrialsFile.Read(call.File, call.Terminal, mayBeNew: true);
        if (file.Value is not { } before) return Answering.Refuse(call, file.Problems);
        var jobs = new List<Job>();
        foreach (string path in call.Arguments.Values.Skip(1))
        {
            var text = Documents.Read(path, call.Terminal);
            if (text.Value is not { } json) return Answering.Refuse(call, text.Problems);
            var job = JobReader.Read(json);
            if (job.Value is not { } read) return Answering.Refuse(call, job.Problems);
            jobs.Add(read);
        }

        var after = jobs.Aggregate(before, (c, j) => c.Taking(OwnTrialsFile.IdOf(j), j).WithJob(OwnTrialsFile.IdOf(j), call.Arguments.Has(Undo)));
        if (jobs.Count > 0 && Documents.Write(call.File, CatalogueDocument.Write(after)) is { Count: > 0 } problems) return Answering.Refuse(call, problems);
        List<ChangedPlan> changed = [.. jobs.Select(j => ChangedPlans.Of(OwnTrialsFile.IdOf(j), j, before, after, PlanData.Embedded, call.Stop)).OfType<ChangedPlan>()];
        call.Terminal.Out.Write(call.Json ? ChangedPlansJson.Write(after, changed) + "\n" : Text(call, after, changed));
        return ExitCode.Answered;
    }

    private static string Text(Call call, TrialCatalogue catalogue, IReadOnlyList<ChangedPlan> changed)
    {
        var (sheet, say) = (new Sheet(call.Terminal, new Settings()), new Say(new Settings()));
        sheet.Heading(sheet.T("own"));
        if (catalogue.Tests.Count == 0) sheet.Paragraph(sheet.T("own.none"));
        foreach (var job in catalogue.Tests.GroupBy(t => t.Job, StringComparer.Ordinal))
        {
            sheet.Paragraph((job.First().Title.Length > 0 ? job.First().Title : job.Key) + (job.All(t => t.Out) ? " " + sheet.T("own.job_out") : ""));
            foreach (var t in job) sheet.Item("", (t.Out ? sheet.T("own.out") + " " : "") + sheet.T(t.Test.BoardMm is null ? "own.test" : "own.test_in_board", Said.Name(t.Test.Fixing), Number(t.Test.LoadN), Said.Words(t.Test.Load), Said.Words(t.Test.Outcome), Number(t.Test.BoardMm ?? 0)));
        }

        if (changed.Count > 0) sheet.Heading(sheet.T("own.changed"));
        foreach (var plan in changed)
            foreach (var item in plan.Items) sheet.Item("!", sheet.T("own.plan", Said.Words(plan.Title), Said.Words(item.Name.Length > 0 ? item.Name : item.Id), Said.Words(sheet.Verdict(item.Before)), Said.Words(sheet.Verdict(item.After))));
        sheet.Paragraph(sheet.T("own.note"));
        return sheet.ToString();
    }

    private static Said Number(double n) => Said.Words(n.ToString("0.#", CultureInfo.InvariantCulture));
}
