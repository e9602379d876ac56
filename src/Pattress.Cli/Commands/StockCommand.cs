using System.Globalization;
using Pattress.Cli.Input;
using Pattress.Cli.Printing;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Jobs.Stocks;
using Pattress.Server;

namespace Pattress.Cli.Commands;

/// <summary>What is in the van: as a list, as CSV, from CSV, and after the job.</summary>
internal static class StockCommand
{
    public const string Csv = "--csv", Done = "--done", Start = "--start";

    public static async Task<int> Run(Call call)
    {
        if (call.Arguments.Has(Start)) return Print(call, StockCsv.Invented(FixingCatalogue.FromEmbedded));
        if (call.Arguments.Values.Count == 0) return Answering.Refuse(call, [new Problem("wrong_words", "pattress stock", "", "a job, or --start for an invented list to begin with")]);
        var text = Documents.Read(call.File, call.Terminal);
        if (text.Value is not { } json) return Answering.Refuse(call, text.Problems);
        var job = JobReader.Read(json);
        if (job.Value is not { } read) return Answering.Refuse(call, job.Problems);
        if (call.Arguments.Values.Count > 1) return Take(call, read);
        if (call.Arguments.Has(Done)) return Print(call, JobWriter.Write(read with { Stock = StockTaking.After(read, (await Bought.Of(json, call.Stop)).Value!.Answer.Plan) }));
        return Print(call, call.Arguments.Has(Csv) ? StockCsv.Write(read) : call.Json ? StockJson.Write(read.Stock, read.Settings) : List(call, read));
    }

    /// <summary>The job with the list of a CSV file in place of its own.</summary>
    private static int Take(Call call, Job job)
    {
        var csv = Documents.Read(call.Arguments.Values[1], call.Terminal);
        if (csv.Value is not { } list) return Answering.Refuse(call, csv.Problems);
        var taken = StockCsv.Read(list, job);
        return taken.Value is { } with ? Print(call, JobWriter.Write(with)) : Answering.Refuse(call, taken.Problems);
    }

    private static string List(Call call, Job job)
    {
        var (sheet, say) = (new Sheet(call.Terminal, job.Settings), new Say(job.Settings));
        sheet.Heading(sheet.T("in_van"));
        if (job.Stock.Count == 0) sheet.Paragraph(sheet.T("nothing"));
        var table = sheet.Table("what", ">number", ">least");
        foreach (var s in job.Stock) table.Row(say.Name(s.Fixing), s.Count.ToString(CultureInfo.InvariantCulture), s.Least > 0 ? s.Least.ToString(CultureInfo.InvariantCulture) : "-");
        if (job.Stock.Count > 0) sheet.Write(table);
        foreach (var low in StockTaking.Low(job.Stock)) sheet.Item("!", say.Sentence(low));
        return sheet.ToString();
    }

    private static int Print(Call call, string text)
    {
        call.Terminal.Out.Write(text.TrimEnd('\n') + "\n");
        return ExitCode.Answered;
    }
}
