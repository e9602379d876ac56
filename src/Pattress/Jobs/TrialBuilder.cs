using System.Text.Json;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>The user's tests and proofs between document and job.</summary>
internal static class TrialBuilder
{
    public static OwnTest Test(Entry e) => new()
    {
        Id = e.TextOf("id"),
        Fixing = e.TextOf("fixing"),
        Load = e.TextOf("load"),
        LoadN = e.NumberOf("load_n"),
        Outcome = e.TextOr("outcome", "failed"),
        BoardMm = e.MaybeNumber("board_mm"),
        Moisture = e.TextOr("moisture", "unknown"),
        Into = e.TextOr("into", "unknown"),
        Wall = e.TextOr("wall", ""),
        From = e.TextOr("from", ""),
        Where = e.TextOr("where", "bench"),
        Mode = e.TextOr("mode", "unknown"),
        On = e.TextOr("on", ""),
        Note = e.TextOr("note", ""),
        Withdrawn = JobBuilder.IsYes(e, "withdrawn"),
    };

    public static ProofRecord Proof(Entry e) => new()
    {
        Id = e.TextOf("id"),
        Fixture = e.TextOf("fixture"),
        Bracket = (int)e.NumberOr("bracket", 0),
        Hole = (int?)e.MaybeNumber("hole"),
        Fixing = e.TextOr("fixing", ""),
        LoadN = e.NumberOf("load_n"),
        HeldS = e.MaybeNumber("held_s"),
        MovedMm = e.MaybeNumber("moved_mm"),
        Result = e.TextOf("result"),
        Way = e.TextOr("way", "other"),
        On = e.TextOr("on", ""),
        Note = e.TextOr("note", ""),
        Withdrawn = JobBuilder.IsYes(e, "withdrawn"),
    };

    public static void Write(Utf8JsonWriter json, OwnTest test)
    {
        json.WriteString("id", test.Id);
        json.WriteString("fixing", test.Fixing);
        json.WriteString("load", test.Load);
        json.WriteNumber("load_n", test.LoadN);
        json.WriteString("outcome", test.Outcome);
        json.WriteMaybe("board_mm", test.BoardMm);
        json.WriteString("moisture", test.Moisture);
        if (test.Into != "unknown") json.WriteString("into", test.Into);
        json.WriteMaybe("wall", test.Wall);
        json.WriteMaybe("from", test.From);
        json.WriteString("where", test.Where);
        json.WriteString("mode", test.Mode);
        json.WriteMaybe("on", test.On);
        json.WriteMaybe("note", test.Note);
        json.WriteIfYes("withdrawn", test.Withdrawn);
    }

    public static void Write(Utf8JsonWriter json, ProofRecord proof)
    {
        json.WriteString("id", proof.Id);
        json.WriteString("fixture", proof.Fixture);
        json.WriteNumber("bracket", proof.Bracket);
        json.WriteMaybe("hole", proof.Hole);
        json.WriteMaybe("fixing", proof.Fixing);
        json.WriteNumber("load_n", proof.LoadN);
        json.WriteMaybe("held_s", proof.HeldS);
        json.WriteMaybe("moved_mm", proof.MovedMm);
        json.WriteString("result", proof.Result);
        json.WriteString("way", proof.Way);
        json.WriteMaybe("on", proof.On);
        json.WriteMaybe("note", proof.Note);
        json.WriteIfYes("withdrawn", proof.Withdrawn);
    }
}
