using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Pattress.Cli.Input;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Papers.Documents;
using Pattress.Papers.Drawings;
using Pattress.Papers.Sheets;
using Pattress.Pdf;

namespace Pattress.Cli.Commands;

/// <summary>Writes the papers of a job as PDF and its drawings as SVG into a folder.</summary>
internal static class PapersCommand
{
    public const string Out = "--out", Paper = "--paper";

    private const string Folder = "papers";

    private static readonly JsonWriterOptions Written = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static int Run(Call call)
    {
        if (Fault(call.Arguments) is { } fault) return Answering.Refuse(call, [fault]);
        var text = call.Read();
        if (text.Value is not { } json) return Answering.Refuse(call, text.Problems);
        var job = JobReader.Read(json);
        if (job.Value is not { } read) return Answering.Refuse(call, job.Problems);
        var size = call.Arguments.Given.GetValueOrDefault(Paper) is { } id ? PaperSize.Find(id)! : PaperSize.For(read.Settings);
        var input = new PaperInput(read, Planner.Plan(read, PlanData.Embedded, call.Stop), call.Terminal.Clock.GetUtcNow(), size);
        string folder = call.Arguments.Given.GetValueOrDefault(Out, Folder);
        try
        {
            Directory.CreateDirectory(folder);
            var files = Files(input, call.Stop).Select(f => Write(folder, f)).ToList();
            call.Terminal.Out.Write(call.Json ? Json(folder, size, files) : Text(folder, files));
            return ExitCode.Answered;
        }
        catch (UnauthorizedAccessException)
        {
            return Answering.Refuse(call, [new("folder_unwritable", Out, folder, "a folder that can be written to")]);
        }
    }

    private static Problem? Fault(Arguments arguments)
    {
        if (arguments.Given.GetValueOrDefault(Paper) is { } size && PaperSize.Find(size) is null) return new("unknown_paper", Paper, size, string.Join(", ", PaperSize.All.Select(s => s.Id)));
        return arguments.Given.GetValueOrDefault(Out) is { Length: 0 } ? new("folder_unwritable", Out, "", "a folder that can be written to") : null;
    }

    private sealed record PaperFile(string Name, string Kind, string Title, int Pages, byte[] Bytes);

    private static IEnumerable<PaperFile> Files(PaperInput input, CancellationToken stop)
    {
        foreach (string id in PaperBook.Ids)
        {
            stop.ThrowIfCancellationRequested();
            var paper = PaperBook.Of(id, input);
            yield return new(id + ".pdf", id, paper.Title, PdfPapers.Pages(paper), PdfPapers.Write(paper, input.Made));
        }
        foreach (var drawing in DrawingBook.All(input)) yield return new(drawing.Id + ".svg", "drawing", drawing.Title, 1, Encoding.UTF8.GetBytes(Svg.Alone(drawing)));
    }

    private static PaperFile Write(string folder, PaperFile file)
    {
        string path = Path.Combine(folder, SafeName(file.Name));
        File.WriteAllBytes(path, file.Bytes);
        return file with { Name = Path.GetFileName(path) };
    }

    // Ids of a job are the user's own words.
    private static string SafeName(string name) => new([.. name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' ? c : '-')]);

    private static string Text(string folder, IReadOnlyList<PaperFile> files)
    {
        var text = new StringBuilder();
        foreach (var file in files)
            text.Append(CultureInfo.InvariantCulture, $"{Path.Combine(folder, file.Name)}  {file.Title}{(file.Kind == "drawing" ? "" : ", " + Pages(file.Pages))}\n");
        return text.ToString();
    }

    private static string Pages(int n) => Texts.Sentence(n == 1 ? "cli.pages.one" : "cli.pages", [Said.Count(n)], new Settings());

    private static string Json(string folder, PaperSize size, IReadOnlyList<PaperFile> files)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Written))
        {
            json.WriteStartObject();
            json.WriteString("folder", folder);
            json.WriteString("paper", size.Id);
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                json.WriteStartObject();
                json.WriteString("name", file.Name);
                json.WriteString("kind", file.Kind);
                json.WriteString("title", file.Title);
                json.WriteNumber("pages", file.Pages);
                json.WriteNumber("bytes", file.Bytes.Length);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
