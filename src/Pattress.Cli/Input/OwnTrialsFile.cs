using Pattress.Jobs;
using Pattress.Jobs.Own;

namespace Pattress.Cli.Input;

/// <summary>The file of the user's own trials from all of his jobs.</summary>
internal static class OwnTrialsFile
{
    /// <summary>The switch that gives it to a command.</summary>
    public const string Switch = "--trials";

    /// <summary>The catalogue of a file; an empty one where there is no file yet and that is allowed.</summary>
    public static Outcome<TrialCatalogue> Read(string path, Terminal terminal, bool mayBeNew = false)
    {
        if (mayBeNew && path != "-" && !File.Exists(path)) return Outcome<TrialCatalogue>.Of(TrialCatalogue.Empty);
        var text = Documents.Read(path, terminal);
        return text.Value is { } json ? CatalogueDocument.Read(json) : Outcome<TrialCatalogue>.Refused(text.Problems);
    }

    /// <summary>What a job is known as in the catalogue: its id, else its title.</summary>
    public static string IdOf(Job job) => job.Id.Length > 0 ? job.Id : job.Title.Length > 0 ? job.Title : "untitled";

    /// <summary>A job document with what other jobs taught in it; as it came where it is no job, so that the command itself says what is wrong.</summary>
    public static string Into(string json, TrialCatalogue catalogue)
    {
        if (JobReader.Read(json).Value is not { } job) return json;
        var with = catalogue.In(IdOf(job), job);
        return ReferenceEquals(with, job) ? json : JobWriter.Write(with);
    }
}
